"""Who is to be rung: whose order isn't settled and is due, and what came of each call."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.news_words import news_words
from desktop.counter.to_agree import to_agree
from desktop.counter.ways_out import Ways, offer_words, offers, wanted, ways_out
from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.fields.dates import day_text, near_moment_text
from desktop.look.space import ROW_DESK
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table
from shared.shop.calls import Offered, Outcome, PlaceFree, ToRing

if TYPE_CHECKING:
    from datetime import date

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from shared.shop.news import News

Row = ToRing | PlaceFree


class CallsDialog(FormDialog):
    """Up and down along the owners; choose what came of the call; Ctrl+Enter logs it.

    Signals:
        picked: an owner's order is to be opened; carries its OrderRow.
        book: whoever waits is to be booked.
    """

    picked = Signal(object)
    book = Signal(object)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self.widen(1180)
        self._bench = bench
        self._agree: dict[int, tuple[str, ...]] = {}
        self._ways: dict[int, Ways | None] = {}
        self._asked: set[int] = set()
        self.outcome: ChoiceField[Outcome] = ChoiceField(self, required=True)
        self.note = TextField(self)
        self.told_to = TextField(self, most=80)
        self.grid.add(self.outcome)
        self.grid.add(self.note)
        self.grid.add(self.told_to)
        self.table: Table[Row] = Table(RowsModel(self._columns()), self, height=ROW_DESK)
        self.table.setMinimumHeight(ROW_DESK * 7)  # what was lost stands below it
        self.add_below(self.table)
        self.lost = Words("body", "contested", self).wrapped()
        self.lost.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.lost.setMinimumHeight(1)  # its height follows from the width it gets
        self.add_below(self.lost)
        self.table.picked.connect(self._open)
        self.table.moved.connect(self._tell_lost)
        down = QShortcut(QKeySequence("Ctrl+Down"), self)
        down.activated.connect(lambda: self.table.setFocus(Qt.FocusReason.ShortcutFocusReason))
        self.retranslate()
        self.read()
        bench.work.run(
            to_agree, bench.store, bench.words, then=self._agreeing, key="counter.agree", owner=self
        )

    def read(self) -> None:
        """Read the list again, the same owner kept."""
        with self._bench.store.read() as work:
            today = self._bench.today()
            free = work.calls.places_free(today)
            rows: list[Row] = [*work.calls.to_ring(today, self._agree.keys()), *free]
            self._most = work.calls.rules().most_calls
        before = self.table.chosen()
        at = next((n for n, one in enumerate(rows) if before and _same(one, before)), 0)
        self.table.show_rows(rows)
        if rows:
            self.table.choose(at)
        self.main.setEnabled(bool(rows))
        self._plan_ways([one for one in rows if isinstance(one, ToRing)])
        self._tell_lost(self.table.chosen())

    def retranslate(self) -> None:
        self.set_words(
            self.tr("To ring"),
            self.tr(
                "First what was lost, then orders not settled that are due, then who waits for a "
                "place. Enter on a line opens the order, or books; Ctrl+Enter logs the call."
            ),
            self.tr("&Log the call"),
            self.tr("&Close"),
        )
        self.outcome.set_label(self.tr("&Rang"))
        self.outcome.set_choices([(one, self._outcome(one)) for one in OUTCOMES])
        self.outcome.set_value("message")
        self.note.set_label(self.tr("&Note"))
        self.told_to.set_label(self.tr("&Told to, if not the owner"))
        self.table.set_name(self.tr("Owners to ring"))
        self._tell_lost(self.table.chosen())

    def attempt(self) -> str:
        """Log the call and stay: the next owner is a key away."""
        chosen, outcome = self.table.chosen(), self.outcome.value()
        if chosen is None or outcome is None:
            return self.tr("Choose the owner that was rung.")
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if isinstance(chosen, PlaceFree):
                one = chosen.waiting
                stale = work.waiting.rang(one.id, outcome, self.note.text(), version=one.version)
                if stale is not None:
                    return self.tr("Another station has rung meanwhile: look again.")
            else:
                self._log(work, chosen, outcome)
            work.commit()
        return ""

    def _log(self, work: "Work", row: ToRing, outcome: Outcome) -> None:
        """What was offered is kept as it was told, and to whom: an owner may ask in a month."""
        told = "" if outcome == "no_answer" else self.told_to.text().strip() or row.order.owner
        said = self._offered(row) if told else ()
        work.calls.log(row.order.id, outcome, self.note.text(), told_to=told, offered=said)

    def _offered(self, row: ToRing) -> tuple[Offered, ...]:
        found = [offer for one in row.news for offer in self._offers(one)]
        return tuple(dict.fromkeys(found))

    def _offers(self, one: "News") -> tuple[Offered, ...]:
        ways = self._ways.get(one.id)
        if one.remedies:  # kept as sentences by an earlier version
            return tuple(Offered(way) for way in one.remedies)
        return offers(ways, self._bench.words) if ways else ()

    def try_it(self) -> None:
        self.refuse("")
        if not self.grid.show_problems():
            return
        said = self.attempt()
        if said:
            self.refuse(said)
            return
        self.note.set_text("")
        self.told_to.set_text("")
        self.mark_kept()
        self.read()

    def _agreeing(self, found: dict[int, tuple[str, ...]]) -> None:
        """The lots are planned: who must agree with whom is told too."""
        self._agree = found
        if found:
            self.read()

    def _plan_ways(self, rows: list[ToRing]) -> None:
        """Have planned what would work for who lost something, as the orders are now."""
        lots = wanted(rows)
        asked = {one.id for news in lots.values() for one in news}
        if asked <= self._asked:
            return
        self._asked = asked
        self._bench.work.run(
            ways_out,
            self._bench.store,
            lots,
            then=self._ways_found,
            key="counter.ways_out",
            owner=self,
        )

    def _ways_found(self, found: dict[int, Ways | None]) -> None:
        self._ways = found
        self._tell_lost(self.table.chosen())

    def _tell_lost(self, row: "Row | None") -> None:
        """Below the list: what the chosen owner loses or must agree on, and what would work."""
        said: list[str] = []
        if isinstance(row, ToRing):
            said += [self._news(one) for one in row.news]
            said += self._agree.get(row.order.id, ())
        self.lost.set_role("contested" if row is not None else "quiet")
        if row is None:
            said = [
                self.tr(
                    "Nobody is to be rung. Orders that come due, owners who must agree and who "
                    "lost something come here by themselves."
                )
            ]
        self.lost.setText("\n".join(said))
        self.lost.setVisible(bool(said))

    def _news(self, one: "News") -> str:
        words = self._bench.words
        ways = tuple(offer_words(offer) for offer in self._offers(one))
        waits = one.id in self._asked and one.id not in self._ways
        return news_words(one, words, ways, planning=waits)

    def _open(self, row: "Row") -> None:
        self.accept()
        if isinstance(row, PlaceFree):
            self.book.emit(row.waiting)
        else:
            self.picked.emit(row.order)

    def _outcome(self, outcome: Outcome) -> str:
        return {
            "no_answer": self.tr("no answer"),
            "message": self.tr("message left"),
            "spoke": self.tr("spoke"),
        }[outcome]

    def _about(self, row: "Row") -> str:
        if isinstance(row, PlaceFree):
            animal = self._bench.words.name(row.waiting.species, f"species.{row.waiting.species}")
            return self.tr("a place is free: {animal}, {count}").format(
                animal=animal, count=row.waiting.head
            )
        words = {
            "no_cut_sheet": self.tr("no cut sheet"),
            "not_settled": self.tr("cut sheet not settled"),
            "inspection": self.tr("the inspector stopped the animal"),
            "loss": self.tr("something was lost"),
            "agree": self.tr("owners must agree"),
        }
        told = [words[one] for one in row.about]
        if row.in_the_end == "usual":
            told.append(self.tr("rung {count} times: the house's usual").format(count=row.silent))
        elif row.in_the_end == "hang":
            told.append(self.tr("rung {count} times: let it hang").format(count=row.silent))
        return ", ".join(told)

    def _last(self, row: "Row") -> str:
        if isinstance(row, PlaceFree):
            return row.waiting.note
        if row.last is None:
            return ""
        when = near_moment_text(row.last.at, self._bench.words.language)
        told = f"{when}: {self._outcome(row.last.outcome)}"
        return f"{told} ({row.last.note})" if row.last.note else told

    def _columns(self) -> list[Column[Row]]:
        language = self._bench.words.language
        return [
            Column(
                "due",
                lambda: self.tr("Due"),
                lambda row: day_text(_day(row), language),
                "date",
                _day,
                width=110,
            ),
            Column("owner", lambda: self.tr("Owner"), _owner, width=190),
            Column("phone", lambda: self.tr("Phone"), _phone, width=140),
            Column(
                "about",
                lambda: self.tr("What about"),
                self._about,
                width=270,
                tip=self._about,
            ),
            Column("last", lambda: self.tr("Last call"), self._last, stretch=True, tip=self._last),
        ]


OUTCOMES: tuple[Outcome, ...] = ("message", "no_answer", "spoke")


def _same(one: "Row", other: "Row") -> bool:
    return type(one) is type(other) and _id(one) == _id(other)


def _id(row: "Row") -> int:
    return row.waiting.id if isinstance(row, PlaceFree) else row.order.id


def _day(row: "Row") -> "date":
    return row.day if isinstance(row, PlaceFree) else row.due


def _owner(row: "Row") -> str:
    return row.waiting.customer if isinstance(row, PlaceFree) else row.order.owner


def _phone(row: "Row") -> str:
    return row.phone if isinstance(row, PlaceFree) else row.order.phone
