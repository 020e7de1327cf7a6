"""Say no when a file of the four rooms is missing from the wheel."""

import sys
import zipfile
from pathlib import Path

ROOMS = ("desktop", "db", "printing", "shared")


def main() -> None:
    """Compare the wheel named first on the command line with the folder it was built from."""
    inside = set(zipfile.ZipFile(sys.argv[1]).namelist())
    ours = {
        path.as_posix()
        for room in ROOMS
        for path in Path(room).rglob("*")
        if path.is_file() and path.suffix != ".pyc"
    }
    if missing := sorted(ours - inside):
        sys.exit("not in the wheel: " + ", ".join(missing))


main()
