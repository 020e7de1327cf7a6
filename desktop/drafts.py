"""A form's half-typed input kept in the journal, and put back as it was."""

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QCheckBox
from shiboken6 import isValid

from desktop.fields.field import Field

if TYPE_CHECKING:
    from desktop.fields import FormDialog
    from desktop.journal import Journal


def keep_draft(
    journal: "Journal",
    name: str,
    dialog: "FormDialog",
    also: Mapping[str, str] | None = None,
    *,
    begun: bool = False,
) -> None:
    """Note every key typed in a dialog until it is taken or left; `also` goes with it.

    `begun` says that the key which opened it is typed in it already.
    """

    def note() -> None:
        if not isValid(dialog):
            return  # a field that goes with its dialog says that it is left
        journal.note(name, {**texts_of(dialog), **(also or {})})

    for _, field in _fields(dialog):
        field.changed.connect(note)
    dialog.finished.connect(lambda _how: journal.forget(name))
    if begun:
        note()


def texts_of(dialog: "FormDialog") -> dict[str, str]:
    """What stands in a dialog's fields, by the names they have in it; ticks are "1" or ""."""
    texts = {name: field.text() for name, field in _fields(dialog)}
    ticks = {name: "1" if box.isChecked() else "" for name, box in _boxes(dialog)}
    return texts | ticks


def restore(dialog: "FormDialog", texts: Mapping[str, str]) -> None:
    """Put texts back, field by field as if they were typed, so that the form fits them."""
    dialog.begun = True
    for name, field in list(_fields(dialog)):
        text = texts.get(name)
        if text is not None and text != field.text():
            field.set_text(text)  # pyright: ignore[reportAttributeAccessIssue]
            field.changed.emit()
    for name, box in list(_boxes(dialog)):
        if name in texts:
            box.setChecked(texts[name] == "1")


def _fields(dialog: "FormDialog") -> Iterator[tuple[str, Field[Any]]]:
    for name, there in vars(dialog).items():
        if isinstance(there, Field):
            yield name, there
        elif isinstance(there, list):
            for place, one in enumerate(there):
                if isinstance(one, Field):
                    yield f"{name}.{place}", one


def _boxes(dialog: "FormDialog") -> Iterator[tuple[str, QCheckBox]]:
    for name, there in vars(dialog).items():
        if isinstance(there, QCheckBox):
            yield name, there
        elif isinstance(there, dict):
            for key, one in there.items():
                if isinstance(one, QCheckBox):
                    yield f"{name}.{key}", one
