"""What hangs there: species, parts, carcass and who owns what."""
