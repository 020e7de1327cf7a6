"""Every change of an order: when, who, at which station, what it was and what it became."""

import json
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.counter.last_time_dialog import words_of
from desktop.counter.ways_out import offer_words
from desktop.fields import FormDialog
from desktop.fields.dates import moment_text
from desktop.look.space import ROW_DENSE
from desktop.tables import Column, RowsModel, Table

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from shared.cutting.order import Choice
    from shared.shop.calls import Call
    from shared.shop.lists import Change
    from shared.shop.orders import OrderChange

STATES = ("open", "settled", "released", "cut", "ready", "handed_over")


@dataclass(frozen=True, slots=True)
class Told:
    """One change, ready for the table."""

    at: datetime
    person: str
    station: str
    what: str
    was: str
    became: str


def history(bench: "Bench", desk: "OrderDesk") -> list[Told]:
    """The changes of the shown order's lines, note and state and its calls, the newest first."""
    with bench.store.read() as work:
        lines = work.orders.changes(desk.order.id)
        others = work.changes.of("order", desk.order.id)
        calls = work.calls.of_order(desk.order.id)
    found = [(one.at, 0, one.id, _of_line(one, desk, bench)) for one in lines]
    found += [(one.at, 1, one.id, _of_order(one, bench)) for one in others]
    found += [(one.at, 2, one.id, _of_call(one)) for one in calls]
    return [one[3] for one in sorted(found, key=lambda one: one[:3], reverse=True)]


class HistoryDialog(FormDialog):
    """Shows the changes; nothing is changed here."""

    def __init__(self, bench: "Bench", desk: "OrderDesk", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self.widen(1220)
        self._bench = bench
        self._desk = desk
        self.table: Table[Told] = Table(
            RowsModel(self._columns()), self, height=ROW_DENSE, sortable=True
        )
        self.table.setMinimumHeight(ROW_DENSE * 14)
        self.add_below(self.table)
        self.leave.hide()
        self.retranslate()
        self.table.show_rows(history(bench, desk))
        self.table.setFocus()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Who changed order {number}").format(number=self._desk.order.number),
            self.tr("The newest change first. Nothing here is ever rewritten."),
            self.tr("&Close"),
            self.tr("Close"),
        )
        self.table.set_name(self.tr("Changes of the order"))

    def _columns(self) -> list[Column[Told]]:
        language = self._bench.words.language

        def when(one: Told) -> str:
            return moment_text(one.at, language)

        return [
            Column(
                "at", lambda: self.tr("When"), when, kind="date", sort=lambda one: one.at, width=220
            ),
            Column("who", lambda: self.tr("Who"), lambda one: one.person, width=130),
            Column("station", lambda: self.tr("Station"), lambda one: one.station, width=100),
            Column("what", lambda: self.tr("What"), lambda one: one.what, width=120),
            Column(
                "was",
                lambda: self.tr("It was"),
                lambda one: one.was,
                stretch=True,
                tip=lambda one: one.was,
            ),
            Column(
                "became",
                lambda: self.tr("It became"),
                lambda one: one.became,
                stretch=True,
                tip=lambda one: one.became,
            ),
        ]


def _of_line(one: "OrderChange", desk: "OrderDesk", bench: "Bench") -> Told:
    was, became = _line(one.before, desk, bench), _line(one.after, desk, bench)
    return Told(one.at, one.person, one.station, kind_said(one.kind), was, became)


def _line(choice: "Choice | None", desk: "OrderDesk", bench: "Bench") -> str:
    if choice is None:
        return ""
    said = words_of(choice, desk, bench.words)
    return f"{said}, “{choice.note}”" if choice.note else said


def _of_order(one: "Change", bench: "Bench") -> Told:
    what, was, became = one.what, "", one.reason
    if one.what in STATES:
        what = bench.words.say(f"state.{one.what}")
    elif one.what == "note":
        data = json.loads(one.data or "{}")
        was = _note(data, "was", "was_due")
        became = _note(data, "now", "now_due")
        what = QCoreApplication.translate("OrderHistory", "note")
    elif one.what == "led":
        what, was, became = led_said(json.loads(one.data or "{}"))
    elif one.what == "closed":
        what = QCoreApplication.translate("OrderHistory", "closed")
    return Told(one.at, one.person, one.station, what, was, became)


def led_said(data: dict[str, object]) -> tuple[str, str, str]:
    """Who says how it is cut: before and from now on, by the number of the share."""
    translate = QCoreApplication.translate

    def named(share: object) -> str:
        if share is None:
            return translate("OrderHistory", "on its own")
        return translate("OrderHistory", "as share {number} says").format(number=share)

    what = translate("OrderHistory", "how it is cut")
    return what, named(data.get("was")), named(data.get("leader"))


def _of_call(one: "Call") -> Told:
    """A call with what came of it; what was offered, in the words and at the price of that day."""
    translate = QCoreApplication.translate
    outcomes = {
        "no_answer": translate("OrderHistory", "rung: no answer"),
        "message": translate("OrderHistory", "rung: message left"),
        "spoke": translate("OrderHistory", "rung: spoke"),
    }
    offered = " · ".join(offer_words(offer) for offer in one.offered)
    parts = [one.note.replace("\n", " / ")]
    if offered:
        parts.append(translate("OrderHistory", "offered: {ways}").format(ways=offered))
    return Told(
        one.at,
        one.person,
        one.station,
        outcomes[one.outcome],
        translate("OrderHistory", "told to {name}").format(name=one.told_to) if one.told_to else "",
        ", ".join(part for part in parts if part),
    )


def _note(data: dict[str, object], text: str, due: str) -> str:
    parts = [str(data.get(text) or ""), str(data.get(due) or "")]
    return ", ".join(part.replace("\n", " / ") for part in parts if part)


def kind_said(kind: str) -> str:
    """What was done to a line, in a word or two."""
    translate = QCoreApplication.translate
    words = {
        "add": translate("OrderHistory", "put on"),
        "change": translate("OrderHistory", "changed"),
        "remove": translate("OrderHistory", "taken off"),
        "pin": translate("OrderHistory", "side fixed"),
        "made": translate("OrderHistory", "cut"),
        "undo": translate("OrderHistory", "taken back"),
        "redo": translate("OrderHistory", "done again"),
    }
    return words[kind]
