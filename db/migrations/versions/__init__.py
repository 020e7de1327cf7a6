"""One file for each revision, each complete in itself."""
