"""Block: the carcass in front of the cutter."""
