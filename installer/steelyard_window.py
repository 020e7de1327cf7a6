"""The frozen program's door for the desk."""

import sys

from desktop.app import main

if __name__ == "__main__":
    sys.exit(main())
