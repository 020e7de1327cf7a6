"""Whether a folder lies on a network drive, where SQLite's locks can't be trusted.

(https://www.sqlite.org/faq.html#q5; https://www.sqlite.org/wal.html: "all processes using a
database must be on the same host computer".)
"""

import sys
from pathlib import Path

NETWORK_KINDS = frozenset(
    ("9p", "afs", "ceph", "cifs", "davfs", "fuse.sshfs", "ncpfs", "nfs", "nfs4", "smb3", "smbfs")
)
DRIVE_REMOTE = 4


def on_network_drive(path: Path, mounts: str | None = None) -> bool:
    """Whether the nearest existing folder of the path is on a network drive.

    `mounts` is what /proc/mounts says, for tests; elsewhere Windows is asked.
    """
    if sys.platform == "win32":
        return _on_windows_share(path)
    if mounts is None:
        listing = Path("/proc/mounts")
        mounts = listing.read_text(encoding="utf-8", errors="replace") if listing.exists() else ""
    return kind_of_mount(path, mounts) in NETWORK_KINDS


def kind_of_mount(path: Path, mounts: str) -> str:
    """The kind of file system the path lies on; "" when the listing doesn't say."""
    best, kind = "", ""
    whole = path.absolute()
    for line in mounts.splitlines():
        fields = line.split()
        if len(fields) < 3:
            continue
        point = fields[1].replace("\\040", " ").replace("\\011", "\t").replace("\\134", "\\")
        if whole.is_relative_to(point) and len(point) >= len(best):
            best, kind = point, fields[2]
    return kind


def _on_windows_share(path: Path) -> bool:
    import ctypes

    drive = path.absolute().drive
    if drive.startswith("\\\\"):
        return True
    kernel = getattr(ctypes, "windll").kernel32  # noqa: B009 - only there on Windows
    return int(kernel.GetDriveTypeW(f"{drive}\\")) == DRIVE_REMOTE
