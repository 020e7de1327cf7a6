"""What one station has at hand; handed to each place when it is made, so nothing is global."""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, date, datetime
from typing import TYPE_CHECKING

from desktop.journal import Journal, own_journal

if TYPE_CHECKING:
    from db.store import Store
    from desktop.messages import Messages
    from desktop.paths import Paths
    from desktop.printers import Printers
    from desktop.settings import SettingsFile
    from desktop.work import Workers
    from printing.words import Words
    from shared.shop.people import Person, Station


@dataclass(frozen=True, slots=True)
class Target:
    """Something to go to: a place's key and, there, a kind of thing and its id.

    Target("counter", "order", 12, lot_id=7) opens order 12 at the counter.
    """

    place: str
    kind: str = ""
    id: int = 0
    lot_id: int | None = None


def utc_now() -> datetime:
    """This moment, as the store keeps it."""
    return datetime.now(UTC)


@dataclass(slots=True)
class Bench:
    """The tools of one station. `app.py` makes it; a place gets it in its constructor.

    `person` and `station` go with every unit of work: `store.work(bench.person, bench.station)`.
    `words` is the trade's catalogue in the language of the window. `journal` keeps what is half
    typed at this station.
    """

    store: "Store"
    paths: "Paths"
    messages: "Messages"
    settings: "SettingsFile"
    printers: "Printers"
    work: "Workers"
    words: "Words"
    person: "Person"
    station: "Station"
    now: Callable[[], datetime] = utc_now
    journal: Journal = field(init=False)

    def __post_init__(self) -> None:
        self.journal = own_journal(self.paths.journal, self.station.id)

    def today(self) -> date:
        """The day it is at this station, by its own clock."""
        return self.now().astimezone().date()
