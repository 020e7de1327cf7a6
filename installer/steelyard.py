"""The frozen program's door for the shell."""

import sys

from desktop.commands import main

if __name__ == "__main__":
    sys.exit(main())
