"""The window and the shell commands: the one room that knows all the others."""
