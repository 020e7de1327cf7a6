"""What a scale says on its line: patterns as data, and what a reading means."""
