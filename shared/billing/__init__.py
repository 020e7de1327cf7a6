"""From shares, weights, packages and a rate card to the bill, and the money that answers it."""
