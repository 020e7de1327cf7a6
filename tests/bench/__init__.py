"""How fast it is: run by hand, `python -m tests.bench plan`."""
