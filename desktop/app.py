"""Opens the window: everything is wired here, in this order, and nothing is global.

1. Qt's application object, so that anything can be said at all.
2. The folder of the shop's data, then the log in it, then the net for our own faults.
3. The station's settings, and from them type, colours and language.
4. The shop's records; when they can't be opened, a sentence with a way out, and the end.
5. The bench: what each place is given.
6. The window, in the place it was left in.
"""

import functools
import gc
import logging
import socket
import sys
from argparse import ArgumentParser
from dataclasses import replace
from pathlib import Path
from time import monotonic
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication

from desktop import (
    logs,
    overrides,  # noqa: F401 - arms the classes that are imported after it
)
from desktop.bench import Bench
from desktop.collecting import Collecting, collect
from desktop.crash import CrashCatcher
from desktop.help_window import HelpWindow
from desktop.language import Language
from desktop.look import theme
from desktop.look.palette import THEMES
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.main_window import MainWindow
from desktop.messages import Messages, SilentMessages, WindowMessages
from desktop.paths import PROGRAM, Paths, bundled_fonts, paths_for, resources
from desktop.people import PersonDialog
from desktop.place_list import ENTRIES
from desktop.printers import Printers
from desktop.records import copy_now, open_records, refusal_text, world_text
from desktop.settings import Settings, SettingsFile
from desktop.work import Workers
from printing.words import Words

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from db.store import Store

TRY_OUT_MS = 30_000
SAID_ENOUGH_S = 3.0
log = logging.getLogger(__name__)


class Program(QObject):
    """The running program: the bench, the window, and what ties them."""

    def __init__(self, app: QApplication, bench: Bench, language: Language, family: str) -> None:
        super().__init__(app)
        self._app = app
        self.bench = bench
        self.language = language
        self._family = family
        self._collecting = Collecting(self)
        self._worn: Settings | None = None
        self.window = MainWindow(bench)
        bench.settings.on_change(self.wear)
        self.window.help_wanted.connect(self.help)
        self.window.keys_wanted.connect(self._help_keys)
        self.window.about_wanted.connect(self._help_about)
        self.window.copy_wanted.connect(self.copy_records)
        self.window.person_wanted.connect(self.ask_person)
        self._telling = False
        self._told_last = ("", 0.0)

    def wear(self, settings: Settings) -> None:
        """Take on the look and the language of the settings, if they changed."""
        before, self._worn = self._worn, settings
        if before is None or (before.theme, before.percent) != (settings.theme, settings.percent):
            theme.apply(self._app, look_of(settings, self._family))
        if settings.language != self.language.now and self.language.use(settings.language):
            self.bench.words = Words(settings.language)

    def open(self) -> None:
        """Show the window in the place it was left in."""
        settings = self.bench.settings.now
        self.window.restore(settings.window)
        known = {entry.key for entry in ENTRIES}
        self.window.enter(settings.place if settings.place in known else ENTRIES[0].key)
        self.window.show()
        # What stays for good is never looked through again: that took more than 50 ms at a time.
        collect()
        gc.freeze()

    def help(self, page: str) -> None:
        """Open the manual at a page, over the window."""
        HelpWindow(page, self.bench.settings.now.language, self.window).show()

    def ask_person(self) -> None:
        """Ask who is working, and show the answer on the bar."""
        dialog = PersonDialog(self.bench, self.window)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.accepted.connect(self.window.retranslate)
        dialog.open()

    def copy_records(self) -> None:
        """Copy the records into the shop's folder of copies, off the window's thread."""
        self.window.say(self.tr("Making a copy of the records…"))
        bench = self.bench
        bench.work.run(
            copy_now, bench.paths, bench.now(), then=self._copied, failed=self._not_copied
        )

    def _copied(self, path: Path) -> None:
        self.window.say(self.tr("Copied to {path}.").format(path=path))

    def _not_copied(self, fault: Exception) -> None:
        from db.problems import StoreUnavailable

        if not isinstance(fault, StoreUnavailable):
            raise fault
        self.window.say("")
        self.bench.messages.tell(PROGRAM, refusal_text(fault, self.bench.words, self.bench.paths))

    def listen_to(self, catcher: CrashCatcher) -> None:
        """Say what the world refuses as that, not as a fault of the program."""
        catcher.of_the_world = self.of_the_world
        catcher.refused.connect(self.tell_refusal, Qt.ConnectionType.QueuedConnection)

    def of_the_world(self, fault: BaseException) -> str:
        """What the world refuses, in a sentence; "" for a fault of ours."""
        return world_text(fault, self.bench.words, self.bench.paths)

    def tell_refusal(self, why: str) -> None:
        """Say it over the window; what comes right behind it, on the line below."""
        said, at = self._told_last
        if self._telling or (said == why and monotonic() - at < SAID_ENOUGH_S):
            self.window.say(why)
            return
        self._telling = True
        text = self.tr("That could not be done. {why}").format(why=why)
        self.bench.messages.tell(PROGRAM, text)
        self._telling, self._told_last = False, (why, monotonic())

    def _help_keys(self) -> None:
        self.help("keys")

    def _help_about(self) -> None:
        self.help("about")

    def close(self) -> None:
        """Let the workers end and the records go."""
        self.bench.work.finish()
        self.bench.journal.close()
        self.bench.store.close()
        self._collecting.end()


def look_of(settings: Settings, family: str) -> Theme:
    """The theme the settings ask for."""
    return Theme(THEMES[settings.theme], settings.percent, family)


def make_bench(
    store: "Store",
    paths: Paths,
    settings: SettingsFile,
    messages: Messages,
    person: str = "",
    station: str = "",
) -> Bench:
    """The tools of this station; person and station are signed on by name."""
    name = person or settings.now.person or "Front counter"
    signed = store.sign_on(name, station or socket.gethostname() or "Station")
    return Bench(
        store=store,
        paths=paths,
        messages=messages,
        settings=settings,
        printers=Printers(settings),
        work=Workers(),
        words=Words(settings.now.language),
        person=signed.person,
        station=signed.station,
    )


def start(
    app: QApplication,
    paths: Paths,
    messages: Messages,
    open_records: "Callable[[Paths], Store]",
) -> Program | None:
    """Steps 3 to 6; None when the records could not be opened and that was said."""
    settings = SettingsFile(paths.settings)
    family = load_fonts(bundled_fonts())
    theme.apply(app, look_of(settings.now, family))
    language = Language(app, resources() / "translations")
    if settings.now.language != "en" and not language.use(settings.now.language):
        settings.now = replace(settings.now, language="en")
    bench = _opened(paths, messages, settings, open_records)
    if bench is None:
        return None
    program = Program(app, bench, language, family)
    try:
        program.open()
    except Exception as fault:  # told, or raised again
        program.window.close()
        program.close()
        _tell_why_not(fault, paths, messages, settings)
        return None
    return program


def _opened(
    paths: Paths,
    messages: Messages,
    settings: SettingsFile,
    open_records: "Callable[[Paths], Store]",
) -> Bench | None:
    store = None
    try:
        store = open_records(paths)
        return make_bench(store, paths, settings, messages)
    except Exception as fault:  # told, or raised again
        if store is not None:
            store.close()
        _tell_why_not(fault, paths, messages, settings)
        return None


def _tell_why_not(
    fault: Exception, paths: Paths, messages: Messages, settings: SettingsFile
) -> None:
    """Say why it can't be opened where the world refuses; a fault of ours is raised again."""
    why = world_text(fault, Words(settings.now.language), paths)
    if not why:
        raise fault
    log.error("not opened: %r", fault)
    messages.tell(PROGRAM, why)


def run(data_dir: Path | None = None) -> int:
    """Open the window and work until it is closed; 0, or 1 when it could not be opened."""
    app = _application()
    paths = paths_for(data_dir)
    messages = WindowMessages()
    try:
        paths.make()
        logs.write_logs_to(paths.logs)
    except OSError as fault:
        from db.backup import of_os

        messages.tell(PROGRAM, refusal_text(of_os(fault, paths.data), Words(), paths))
        return 1
    logs.hear_qt()
    catcher = CrashCatcher(app)
    catcher.install()
    program = start(app, paths, messages, open_records)
    if program is None:
        return 1
    program.listen_to(catcher)
    status = app.exec()
    program.close()
    catcher.remove()
    return status


def try_out(data_dir: Path) -> int:
    """Open the window on a folder, go through every place, close it: 0 when nothing went wrong.

    For the self-test: nobody is asked anything, a fault anywhere gives 3, and so does a window
    that is still open after some seconds.
    """
    app = _application()
    paths = paths_for(data_dir)
    paths.make()
    catcher = CrashCatcher(app)
    catcher.install()
    faults: list[str] = []
    catcher.reported.connect(faults.append)
    program = start(app, paths, SilentMessages(), open_records)
    if program is None:
        return 1

    def walk() -> None:
        for entry in ENTRIES:
            program.window.enter(entry.key)
            app.processEvents()
        program.window.close()

    QTimer.singleShot(0, walk)
    too_long = QTimer(singleShot=True, interval=TRY_OUT_MS)
    too_long.timeout.connect(functools.partial(app.exit, 3))
    too_long.start()
    status = app.exec()
    too_long.stop()  # else it would end whatever loop runs by then
    program.close()
    catcher.remove()
    return 3 if faults else status


def _application() -> QApplication:
    app = QApplication.instance()
    if not isinstance(app, QApplication):
        app = QApplication(sys.argv[:1])
    app.setApplicationName(PROGRAM)
    app.setDesktopFileName("steelyard")
    return app


def main(arguments: "Sequence[str] | None" = None) -> int:
    """The window, from a desktop icon; `--data-dir` names the shop's folder as in a shell."""
    parser = ArgumentParser(prog="steelyard-window")
    parser.add_argument("--data-dir", type=Path, metavar="FOLDER")
    return run(parser.parse_args(arguments).data_dir)
