"""Network drives are known by what the system says is mounted where."""

from pathlib import Path

import pytest

from db.network_drive import kind_of_mount, on_network_drive

MOUNTS = """\
/dev/sda1 / ext4 rw 0 0
tmpfs /run tmpfs rw 0 0
server:/export /srv nfs4 rw 0 0
/dev/sdb1 /srv/local ext4 rw 0 0
//office/plant /mnt/office\\040share cifs rw 0 0
anna@host:/ /home/anna/far fuse.sshfs rw 0 0
"""


@pytest.mark.parametrize(
    ("path", "kind", "network"),
    [
        ("/home/anna/steelyard.db", "ext4", False),
        ("/srv/plant/steelyard.db", "nfs4", True),
        ("/srv/local/steelyard.db", "ext4", False),
        ("/srvice/steelyard.db", "ext4", False),
        ("/mnt/office share/steelyard.db", "cifs", True),
        ("/home/anna/far/steelyard.db", "fuse.sshfs", True),
    ],
)
def test_the_innermost_mount_decides(path: str, kind: str, network: bool) -> None:
    assert kind_of_mount(Path(path), MOUNTS) == kind
    assert on_network_drive(Path(path), MOUNTS) is network


def test_nothing_known_is_not_a_network_drive() -> None:
    assert on_network_drive(Path("/home/anna/steelyard.db"), "") is False
