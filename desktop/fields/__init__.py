"""Entry fields: a label, what is typed, and the complaint below it in words."""
