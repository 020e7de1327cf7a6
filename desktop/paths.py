"""Where everything of a shop lies on this machine; `--data-dir` moves all of it."""

from dataclasses import dataclass
from pathlib import Path

PROGRAM = "Steelyard"


@dataclass(frozen=True, slots=True)
class Paths:
    """The places of one shop's data. All lie under `data`, so that one folder is the shop."""

    data: Path

    @property
    def database(self) -> Path:
        """The shop's records."""
        return self.data / "steelyard.db"

    @property
    def settings(self) -> Path:
        """This station's window and printer preferences."""
        return self.data / "settings.json"

    @property
    def logs(self) -> Path:
        """Log files, the newest without a number."""
        return self.data / "logs"

    @property
    def copies(self) -> Path:
        """Copies of the records: one a day of use, one before each upgrade."""
        return self.data / "copies"

    @property
    def journal(self) -> Path:
        """What is half typed, kept in case the program is killed."""
        return self.data / "journal"

    def make(self) -> None:
        """Make the folders that are missing. Raises OSError when the disk says no."""
        for folder in (self.data, self.logs, self.copies, self.journal):
            folder.mkdir(parents=True, exist_ok=True)


def paths_for(data_dir: Path | None = None) -> Paths:
    """The given folder, else the user's own data folder of this system."""
    if data_dir is not None:
        return Paths(data_dir.expanduser().resolve())
    import platformdirs  # only needed when nobody named a folder

    return Paths(Path(platformdirs.user_data_dir(PROGRAM, appauthor=False)))


def bundled_fonts() -> Path:
    """The folder of the type faces that come with the program."""
    import printing

    return Path(str(printing.__file__)).parent / "fonts"


def resources() -> Path:
    """The folder of the window's own pictures and translations."""
    return Path(__file__).parent / "resources"
