"""The evening of the kill: each share's hanging weight, to print, to mail, and to log as told."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QDesktopServices, QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.day_weights import DayShare, read_day, with_quote
from desktop.fields import ChoiceField, DateField, FormDialog, TextField
from desktop.fields.dates import date_text
from desktop.look.patterns import Mark
from desktop.look.space import ROW_DESK, TOGETHER, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.paper_words import in_language
from desktop.tables import Column, Figure, RowsModel, Table
from printing.mail import Mail, addresses_in, mail
from printing.words import LANGUAGES
from shared.units import pounds_text

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from desktop.bench import Bench
    from printing.hanging_words import HangingNote
    from printing.words import Words as Catalogued
    from shared.shop.weights_told import ToldHow

HOW: "tuple[ToldHow, ...]" = ("mail", "paper", "spoken")


class WeightsDialog(FormDialog):
    """Up and down along the shares; Ctrl+P prints a note for each; Ctrl+Enter logs the chosen."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=4)
        self.widen(1180)
        self._bench = bench
        self._shown: date | None = None
        self._make()
        self._arrange()
        self.retranslate()
        self.day.set_value(bench.today())
        self.price.set_value("no")
        self.day.committed.connect(self.read)
        self.read()

    def _make(self) -> None:
        self.day = DateField(self._bench.today, self, required=True)
        self.price: ChoiceField[str] = ChoiceField(self, required=True)
        self.how: ChoiceField[ToldHow] = ChoiceField(self, required=True)
        self.note = TextField(self)
        for field in (self.day, self.price, self.how, self.note):
            self.grid.add(field)
        self.table: Table[DayShare] = Table(
            RowsModel(self._columns()), self, height=ROW_DESK, sortable=False
        )
        self.table.setMinimumHeight(ROW_DESK * 9)
        self.says = Words("body", parent=self).wrapped()
        self.says.setMinimumHeight(ROW_DESK * 2)
        self.says.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.table.moved.connect(self._show_note)

    def _arrange(self) -> None:
        self.print_all, self.print_one, self.mail = button(self), button(self), button(self)
        beside = row(gap=TOGETHER)
        for one, keys, slot in (
            (self.print_all, "Ctrl+P", self.print_notes),
            (self.print_one, "Ctrl+Shift+P", self.print_chosen),
            (self.mail, "F7", self.open_mail),
        ):
            one.setAutoDefault(False)
            one.clicked.connect(slot)
            QShortcut(QKeySequence(keys), self).activated.connect(slot)
            beside.addWidget(one)
        beside.addStretch(1)
        down = QShortcut(QKeySequence("Ctrl+Down"), self)
        down.activated.connect(lambda: self.table.setFocus(Qt.FocusReason.ShortcutFocusReason))
        buttons = QWidget(self)
        buttons.setLayout(beside)
        for part in (self.table, self.says, buttons):
            self.add_below(part)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Weights of the day"),
            self.tr(
                "Every share of the day, weighed or not. A note goes out in its owner's "
                "language; log each as told, as you would a call."
            ),
            self.tr("&Log as told"),
            self.tr("&Close"),
        )
        self.day.set_label(self.tr("&Day of the kill"))
        self.price.set_label(self.tr("Price in the note"))
        self.price.set_choices([("no", self.tr("none")), ("yes", self.tr("the estimate so far"))])
        self.how.set_label(self.tr("&Told by"))
        self.how.set_choices([(one, self._how(one)) for one in HOW])
        self.how.set_value("mail")
        self.note.set_label(self.tr("&Note"))
        self.table.set_name(self.tr("Shares of the day"))
        self.print_all.setText(self.tr("&Print all notes  Ctrl+P"))
        self.print_one.setText(self.tr("Print thi&s one  Ctrl+Shift+P"))
        self.mail.setText(self.tr("Write a &mail  F7"))

    def read(self) -> None:
        """Read the day's shares on a worker; the same one stays chosen."""
        day = self.day.value()
        if day is None:
            return
        if day != self._shown:  # never one day's shares under another's date
            self._shown = day
            self.table.show_rows([])
            self._let(False)
            self.says.setText(self.tr("Reading"))
        run = self._bench.work.run
        run(read_day, self._bench.store, day, then=self._show, key="weights", owner=self)

    def _let(self, there: bool) -> None:
        for one in (self.main, self.print_all, self.print_one, self.mail):
            one.setEnabled(there)

    def _show(self, rows: list[DayShare]) -> None:
        before = self.table.chosen()
        at = next((n for n, one in enumerate(rows) if before and _same(one, before)), 0)
        self.table.show_rows(rows)
        if rows:
            self.table.choose(at)
        self._let(bool(rows))
        self._show_note(self.table.chosen())

    def attempt(self) -> str:
        """Log the chosen share as told and stay: the next is a key away."""
        chosen, how = self.table.chosen(), self.how.value()
        if chosen is None or how is None:
            return self.tr("Choose the share whose owner was told.")
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            work.weights_told.tell(chosen.order_id, how, chosen.hanging_ng, self.note.text())
            work.commit()
        return ""

    def try_it(self) -> None:
        self.refuse("")
        if not self.grid.show_problems():
            return
        said = self.attempt()
        if said:
            self.refuse(said)
            return
        self.note.set_text("")
        self.mark_kept()
        self.read()

    def print_notes(self) -> None:
        """A note for every share of the day, in one paper."""
        self._print(self.table.rows.rows())

    def print_chosen(self) -> None:
        """The note of the chosen share."""
        chosen = self.table.chosen()
        self._print([chosen] if chosen is not None else [])

    def _print(self, shares: "Sequence[DayShare]") -> None:
        if not shares:
            return
        bench, made, priced = self._bench, self._bench.now(), self.price.value() == "yes"
        spoken = self._spoken()
        with bench.store.read() as work:
            shop = work.shop.details()

        def paper() -> bytes:
            from printing.hanging_note import hanging_notes

            told = [(_told(bench, one, priced), spoken[one.language]) for one in shares]
            return hanging_notes(told, shop=shop, made=made)

        bench.work.run(paper, then=self._show_paper, key="weights.paper", owner=self)

    def _show_paper(self, pdf: bytes) -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        self.preview = show_paper(self._bench, pdf, self.tr("Weights of the day"), "paper", self)
        self.how.set_value("paper")

    def open_mail(self) -> None:
        """Open the shop's mail program with the note filled in; who has no address is printed."""
        chosen = self.table.chosen()
        if chosen is None:
            return
        self.refuse("")
        addresses = addresses_in(chosen.email)
        if not addresses:
            self.refuse(self._no_address(chosen))
            return
        bench, priced = self._bench, self.price.value() == "yes"
        words = self._spoken()[chosen.language]
        with bench.store.read() as work:
            shop = work.shop.details()

        def written() -> Mail:
            from printing.hanging_words import mail_subject, mail_texts

            note = _told(bench, chosen, priced)
            texts = mail_texts(note, shop, words)
            return mail(addresses, mail_subject(note, shop, words), texts)

        bench.work.run(written, then=self._open_mail, key="weights.mail", owner=self)

    def _no_address(self, chosen: DayShare) -> str:
        if chosen.email:
            text = self.tr("“{address}” can't be read as a mail address: print the note or ring.")
            return text.format(address=chosen.email)
        owner = chosen.note.owner or self.tr("to be named")
        text = self.tr("{owner} has no mail address kept: print the note or ring.")
        return text.format(owner=owner)

    def _open_mail(self, written: Mail) -> None:
        self.how.set_value("mail")
        if not QDesktopServices.openUrl(QUrl(written.link, QUrl.ParsingMode.StrictMode)):
            self.refuse(self.tr("This computer has no mail program set up: print the note."))
        elif written.shortened:
            self.refuse(self.tr("Too long for a mail's link: it is shorter than the printed note."))

    def _spoken(self) -> "dict[str, Catalogued]":
        return {one: in_language(self._bench.words, one) for one in LANGUAGES}

    def _show_note(self, chosen: DayShare | None) -> None:
        """Below the table: what the chosen owner is told, in the window's language."""
        if chosen is None:
            self.says.setText(self.tr("No animal was killed or is to be on this day."))
            return
        from printing.hanging_words import told_lines

        said = " ".join(told_lines(chosen.note, self._bench.words))
        if chosen.told_otherwise:
            said = self.tr("Told before, and weighed otherwise since: tell it again.") + " " + said
        self.says.setText(said)

    def _how(self, how: "ToldHow") -> str:
        return {
            "mail": self.tr("mail"),
            "paper": self.tr("paper"),
            "spoken": self.tr("phone or in person"),
        }[how]

    def _weight(self, one: DayShare) -> Figure:
        return Figure("" if one.hanging_ng is None else pounds_text(one.hanging_ng, 2))

    def _sources(self, one: DayShare) -> str:
        say = self._bench.words.say
        said = [say(f"money.how_{each.source}") for each in one.note.hanging.held]
        return ", ".join(dict.fromkeys(said))

    def _was_told(self, one: DayShare) -> str:
        if one.told is None:
            return self.tr("not yet")
        at = one.told.at.astimezone()
        when = f"{at:%H:%M}"
        if at.date() != self.day.value():
            when = f"{date_text(at.date(), self._bench.words.language)}, {when}"
        return f"{self._how(one.told.how)}, {when}, {one.told.person}"

    def _columns(self) -> list[Column[DayShare]]:
        words = self._bench.words
        return [
            Column(
                "owner",
                lambda: self.tr("Owner"),
                lambda one: one.note.owner or self.tr("to be named"),
                width=200,
            ),
            Column(
                "animal",
                lambda: self.tr("Animal"),
                lambda one: _animal(one.note, words),
                width=120,
            ),
            Column("weight", lambda: self.tr("Hangs"), self._weight, "figure", width=110),
            Column("how", lambda: self.tr("How it was found"), self._sources, width=230),
            Column(
                "mail",
                lambda: self.tr("Mail"),
                lambda one: one.email or self.tr("no address"),
                width=250,
                tip=lambda one: one.email,
            ),
            Column(
                "told",
                lambda: self.tr("Told"),
                self._was_told,
                "state",
                mark=lambda one: (
                    Mark.SETTLED if one.told is not None and not one.told_otherwise else Mark.OPEN
                ),
                stretch=True,
            ),
        ]


def _told(bench: "Bench", share: DayShare, priced: bool) -> "HangingNote":
    return replace(share.note, quote=with_quote(bench.store, share)) if priced else share.note


def _animal(note: "HangingNote", words: "Catalogued") -> str:
    name = words.name(note.species, f"species.{note.species}")
    tags = ", ".join(tag for tag in note.tags if tag)
    return f"{name} {tags}".strip()


def _same(one: DayShare, other: DayShare) -> bool:
    return one.order_id == other.order_id
