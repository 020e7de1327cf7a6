"""This station's preferences as one typed value, kept in a small JSON file."""

import json
import logging
import os
from collections.abc import Callable
from dataclasses import asdict, dataclass, field, fields, replace
from pathlib import Path
from typing import Any

from desktop.block.letters import LEAST_LETTERS, MOST_LETTERS

log = logging.getLogger(__name__)

THEMES = ("light", "dark")
LANGUAGES = ("en", "es")


@dataclass(frozen=True, slots=True)
class Settings:
    """What this station remembers of itself; nothing of the shop's work is in here.

    `percent` is the type factor, 80 to 175. `printers` maps a kind of paper ("paper", "label")
    to the printer last used for it. `window` is the window's place on the screen, as hex.
    `block_letters` and `rail_letters` are the height of capitals in mm, at the rail when large.
    `scales` maps a place ("wrap", "rail") to the number of the scale used there, 0 for none.
    """

    theme: str = "light"
    percent: int = 100
    language: str = "en"
    printers: dict[str, str] = field(default_factory=dict[str, str])
    scales: dict[str, int] = field(default_factory=dict[str, int])
    window: str = ""
    block_letters: int = 9
    rail_letters: int = 9
    place: str = "counter"
    person: str = ""


class SettingsFile:
    """The settings in use and the file they are kept in.

    A damaged file is set aside as `settings.json.damaged` and the usual settings hold.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.now = self._read()
        self._listeners: list[Callable[[Settings], None]] = []

    def change(self, **changes: object) -> None:
        """Change some settings, write them, tell who listens. A full disk only goes to the log."""
        self.now = replace(self.now, **changes)  # pyright: ignore[reportArgumentType]
        try:
            self._write()
        except OSError as fault:
            log.warning("settings not written: %s", fault)
        for listener in self._listeners:
            listener(self.now)

    def on_change(self, listener: Callable[[Settings], None]) -> None:
        """Call `listener` with the new settings after each change."""
        self._listeners.append(listener)

    def _read(self) -> Settings:
        if not self.path.exists():
            return Settings()
        try:
            return _checked(json.loads(self.path.read_text("utf-8")))
        except (OSError, ValueError, TypeError, RecursionError) as fault:
            log.warning("settings set aside: %s", fault)
            self._set_aside()
            return Settings()

    def _set_aside(self) -> None:
        try:
            self.path.replace(self.path.with_name(self.path.name + ".damaged"))
        except OSError as fault:
            log.warning("settings not set aside: %s", fault)

    def _write(self) -> None:
        self.path.parent.mkdir(parents=True, exist_ok=True)
        fresh = self.path.with_name(self.path.name + ".new")
        with fresh.open("w", encoding="utf-8") as file:
            json.dump(asdict(self.now), file, indent=2, ensure_ascii=False)
            file.flush()
            os.fsync(file.fileno())
        fresh.replace(self.path)


def _checked(found: object) -> Settings:
    """Settings from a file's content; a wrong type raises TypeError, unknown names are left."""
    if not isinstance(found, dict):
        raise TypeError(f"settings are {found!r}")
    usual = Settings()
    known: dict[str, Any] = {}
    for each in fields(Settings):
        if each.name not in found:
            continue
        value = found[each.name]
        if type(value) is not type(getattr(usual, each.name)):
            raise TypeError(f"{each.name} is {value!r}")
        known[each.name] = value
    settings = replace(usual, **known)
    return replace(
        settings,
        theme=settings.theme if settings.theme in THEMES else usual.theme,
        language=settings.language if settings.language in LANGUAGES else usual.language,
        percent=min(max(settings.percent, 80), 175),
        printers={each: one for each, one in settings.printers.items() if type(one) is str},
        scales={each: one for each, one in settings.scales.items() if type(one) is int},
        block_letters=min(max(settings.block_letters, LEAST_LETTERS), MOST_LETTERS),
        rail_letters=min(max(settings.rail_letters, LEAST_LETTERS), MOST_LETTERS),
    )
