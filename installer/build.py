"""Build the program as one folder, then run what was built.

`python installer/build.py --to FOLDER` leaves `FOLDER/steelyard/`. On Windows, where makensis
is installed, it also leaves the installer. PyInstaller builds only for the system it runs on.
"""

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent
ON_WINDOWS = sys.platform == "win32"
BUILD_SECONDS = 280
SELF_TEST_SECONDS = 120


def freeze(to: Path) -> Path:
    """Freeze the program into one folder below `to`; return the folder."""
    with tempfile.TemporaryDirectory() as work:
        command = [sys.executable, "-m", "PyInstaller", "--noconfirm", "--log-level", "WARN"]
        command += ["--distpath", str(to), "--workpath", work, str(HERE / "app.spec")]
        subprocess.run(command, check=True, timeout=BUILD_SECONDS, cwd=HERE)
    return to / "steelyard"


def prove(program: Path) -> None:
    """Run the frozen program's own self-test, away from the checkout and with no display."""
    door = program / ("steelyard.exe" if ON_WINDOWS else "steelyard")
    quiet = {"PYTHONPATH", "PYTHONHOME", "VIRTUAL_ENV"}
    surroundings = {key: value for key, value in os.environ.items() if key not in quiet}
    surroundings["QT_QPA_PLATFORM"] = "offscreen"
    with tempfile.TemporaryDirectory() as elsewhere:
        subprocess.run(
            [door, "self-test"],
            check=True,
            timeout=SELF_TEST_SECONDS,
            cwd=elsewhere,
            env=surroundings,
        )


def pack_for_windows(program: Path, to: Path) -> None:
    """Compile the Windows installer.

    Elsewhere than on Windows the script is only checked, on a folder of one empty file, and
    what comes out is thrown away: a program frozen here doesn't run there.
    """
    makensis = shutil.which("makensis")
    if makensis is None:
        print("makensis isn't here: no Windows installer")
        return
    with tempfile.TemporaryDirectory() as scratch:
        source, target = program, to / "steelyard-setup.exe"
        if not ON_WINDOWS:
            source, target = Path(scratch) / "steelyard", Path(scratch) / "steelyard-setup.exe"
            source.mkdir()
            (source / "steelyard.exe").touch()
        names = {"PROGRAM": source, "TARGET": target}
        defined = [f"-D{name}={value}" for name, value in names.items()]
        subprocess.run(
            [makensis, "-V2", *defined, str(HERE / "windows.nsi")],
            check=True,
            timeout=BUILD_SECONDS,
        )
        print("Windows installer made" if ON_WINDOWS else "windows.nsi compiles")


def main() -> None:
    """Build, prove and pack."""
    parser = argparse.ArgumentParser(description="Build the program as one folder.")
    parser.add_argument("--to", type=Path, default=HERE / "dist", help="where to leave it")
    to = parser.parse_args().to.resolve()
    program = freeze(to)
    size = sum(
        path.stat().st_size
        for path in program.rglob("*")
        if path.is_file() and not path.is_symlink()
    )
    print(f"{program}: {size // 1_000_000} MB")
    prove(program)
    pack_for_windows(program, to)


if __name__ == "__main__":
    main()
