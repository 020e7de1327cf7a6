"""What desktop tests share: the program's look, recorded messages, and a bench on a real store."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from shiboken6 import delete, isValid

from db.store import Store
from desktop import overrides  # noqa: F401 - arms the classes that are imported after it
from desktop.bench import Bench
from desktop.collecting import Collecting
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.paths import Paths, bundled_fonts
from desktop.printers import Printers
from desktop.settings import SettingsFile
from desktop.work import Workers
from printing.words import Words
from shared.shop.people import SignedOn
from tests.desktop.recorded_messages import RecordedMessages
from tests.store_fixture import Clock

OURS = ("desktop.", "tests.")


@pytest.fixture(scope="session")
def worn(qapp: QApplication) -> Theme:
    """The light theme in the bundled face."""
    return Theme(family=load_fonts(bundled_fonts()))


@pytest.fixture(scope="session")
def collecting(qapp: QApplication) -> Iterator[Collecting]:
    """What is no longer in use is collected as in the program."""
    mine = Collecting()
    yield mine
    mine.end()


@pytest.fixture(autouse=True)
def dressed(qapp: QApplication, worn: Theme, collecting: Collecting) -> Iterator[Theme]:
    """The application as it is started; a test that changes its look leaves it as it was.

    Its windows go with it. Left to Python's own search their parts would go in any order, and
    what Qt still calls of a part would find nothing of it there.
    """
    if theme.theme_of() != worn:
        theme.apply(qapp, worn)
    yield worn
    for left_open in (one for one in qapp.topLevelWidgets() if isValid(one)):
        if left_open.isVisible():
            left_open.hide()
        if left_open.parent() is None and type(left_open).__module__.startswith(OURS):
            delete(left_open)
    if theme.theme_of() != worn:
        theme.apply(qapp, worn)
    collecting.look()


@pytest.fixture
def messages() -> RecordedMessages:
    """The door for messages, which keeps what was said and answers what the test set."""
    return RecordedMessages()


@pytest.fixture
def paths(tmp_path: Path) -> Paths:
    """A shop's folder, made and empty."""
    made = Paths(tmp_path / "shop")
    made.make()
    return made


@pytest.fixture
def bench(
    qapp: QApplication,
    store: Store,
    signed: SignedOn,
    clock: Clock,
    messages: RecordedMessages,
    paths: Paths,
) -> Iterator[Bench]:
    """The tools of a station on an empty real store, with a clock that stands still."""
    settings = SettingsFile(paths.settings)
    workers = Workers()
    yield Bench(
        store=store,
        paths=paths,
        messages=messages,
        settings=settings,
        printers=Printers(settings),
        work=workers,
        words=Words(strict=True),
        person=signed.person,
        station=signed.station,
        now=clock,
    )
    workers.finish()
