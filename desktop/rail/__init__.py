"""Rail: arrivals, tags, weights, inspection, what hangs where."""
