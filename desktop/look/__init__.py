"""The shop's look: colours, type, space, patterns, in one place each."""
