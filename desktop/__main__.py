"""`python -m desktop` is `steelyard`."""

import sys

from desktop.commands import main

if __name__ == "__main__":
    sys.exit(main())
