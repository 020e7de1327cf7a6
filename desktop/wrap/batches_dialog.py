"""Cure, smoke and sausage: the batches at hand, what is in each, its nitrite, its next stage."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QWidget

from desktop.fields.dates import date_text
from desktop.look.space import EDGE, GROUP, ROW_DENSE, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.over import open_over
from desktop.tables import Column, Figure, RowsModel, Table, figure
from desktop.wrap.batch_dialogs import BeginBatch, CureFacts, PutMeatIn, WeighOut
from printing.words.batch_words import nitrite_text
from printing.words.place_words import capital
from shared.curing.batch import STATES, Added, Batch, PutIn
from shared.curing.nitrite import nitrite
from shared.shop.problems import Refused
from shared.units import pounds_text, weight_text

if TYPE_CHECKING:
    from PySide6.QtWidgets import QVBoxLayout

    from desktop.bench import Bench
    from desktop.fields import FormDialog
    from shared.curing.batch import BatchState
    from shared.units import Weight

GOOD = ("within", "on_target")
Inside = PutIn | Added


class BatchesDialog(QDialog):
    """Batches at the left, the chosen one at the right; every step by key."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.dialog: FormDialog | None = None
        open_over(self, 1320, 660)
        self._shares: dict[int, Weight] = {}
        self._build()
        self._connect()
        self.retranslate()
        self.refresh()

    def _build(self) -> None:
        self.heading = Words("group", parent=self)
        self.batches: Table[Batch] = Table(RowsModel(self._batch_columns()), self)
        self.title = Words("group", parent=self)
        self.facts = Words("body", "quiet", self).wrapped()
        self.nitrite = Words("body", parent=self).wrapped()
        self.caution = Words("small", "quiet", self).wrapped()
        self.meat: Table[Inside] = Table(
            RowsModel(self._meat_columns()), self, height=ROW_DENSE, sortable=False
        )
        self.said = Words("body", "complaint", self).wrapped()
        self.new, self.put, self.out, self.cure, self.next, self.sheet, self.leave = (
            button(self, main=at == 1) for at in range(7)
        )
        left = column(gap=TOGETHER)
        for one in (self.heading, self.batches, self.new):
            left.addWidget(one)
        right = column(gap=TOGETHER)
        for one in (self.title, self.facts, self.meat, self.nitrite, self.caution, self.said):
            right.addWidget(one)
        self._lay_buttons(right)
        across = row(self, gap=GROUP, edge=EDGE)
        across.addLayout(left, 5)
        across.addLayout(right, 7)

    def _lay_buttons(self, right: "QVBoxLayout") -> None:
        """In a row; in the largest type in two, for one is wider than the least window."""
        steps, others = (self.put, self.out, self.cure, self.next), (self.sheet, self.leave)
        large = theme_of(self).percent > 125
        for buttons in (steps, others) if large else ((*steps, *others),):
            feet = row(gap=TOGETHER)
            for one in buttons:
                if one is self.leave:
                    feet.addStretch(1)
                feet.addWidget(one)
            if self.leave not in buttons:
                feet.addStretch(1)
            right.addLayout(feet)

    def _connect(self) -> None:
        self.batches.moved.connect(self._chosen)
        self.batches.picked.connect(lambda _batch: self.put_in())
        for one, keys, slot in (
            (self.new, "Ctrl+N", self.begin),
            (self.put, "F8", self.put_in),
            (self.out, "Del", self.take_out),
            (self.cure, "F9", self.say_cure),
            (self.next, "Ctrl+Return", self.advance),
            (self.sheet, "Ctrl+P", self.print_sheet),
        ):
            one.clicked.connect(slot)
            one.setAutoDefault(False)
            QShortcut(QKeySequence(keys), self).activated.connect(slot)
        self.leave.clicked.connect(self.reject)
        self.leave.setAutoDefault(False)

    def retranslate(self) -> None:
        """Set every word again."""
        self.setWindowTitle(self.tr("Cure, smoke and sausage"))
        self.heading.setText(self.tr("Cure, smoke and sausage"))
        self.batches.set_name(self.tr("Batches"))
        self.meat.set_name(self.tr("What is in the batch"))
        self.new.setText(self.tr("&New batch… (Ctrl+N)"))
        self.put.setText(self.tr("&Put meat in… (F8)"))
        self.out.setText(self.tr("&Take it out…"))
        self.cure.setText(self.tr("&Cure… (F9)"))
        self.sheet.setText(self.tr("&Sheet (Ctrl+P)"))
        self.leave.setText(self.tr("C&lose"))
        self.caution.setText(self.bench.words.say("batches.caution"))
        self._chosen(self.batches.chosen())

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()

    def refresh(self, keep: int = 0) -> None:
        """Read the batches again; the chosen one, or that one, stays chosen."""
        with self.bench.store.read() as work:
            found = list(work.batches.list())
        before = self.batches.chosen()
        wanted = keep or (before.id if before else 0)
        chosen = next((one for one in found if one.id == wanted), None)
        self.batches.show_rows(found, chosen)
        self._chosen(self.batches.chosen())
        self.batches.setFocus(Qt.FocusReason.OtherFocusReason)

    def begin(self) -> None:
        """A new batch by one of the recipes."""
        with self.bench.store.read() as work:
            recipes = work.recipes.all()
        if not recipes:
            self.said.setText(self.tr("There is no recipe yet: Office (F6), Recipes."))
            return
        self._open(BeginBatch(self.bench, recipes, self))

    def put_in(self) -> None:
        """Meat of an order's line goes into the chosen batch."""
        batch = self.batches.chosen()
        if batch is not None and batch.state == "gathering":
            self._open(PutMeatIn(self.bench, batch, self))

    def say_cure(self) -> None:
        """What is known of the cure of the chosen batch."""
        batch = self.batches.chosen()
        if batch is not None and batch.cure is not None:
            self._open(CureFacts(self.bench, batch, self))

    def take_out(self) -> None:
        """The chosen meat, or what was added to it, doesn't go in after all."""
        meat = self.meat.chosen()
        batch = self.batches.chosen()
        if meat is None or batch is None or batch.state != "gathering":
            return
        reason = self.bench.messages.ask_reason(
            self.tr("Take it out"), self.tr("It stays in the record. Why does it not go in?")
        )
        if reason is None:
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            if isinstance(meat, Added):
                work.batches.take_added_out(meat.id, reason)
            else:
                work.batches.take_out(meat.id, reason)
            work.commit()
        self.refresh()

    def advance(self) -> None:
        """On to the next stage; the finished weight is asked when it is done."""
        batch = self.batches.chosen()
        to = _next(batch) if batch is not None else None
        if batch is None or to is None:
            return
        if to == "done":
            self._open(WeighOut(self.bench, batch, self))
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.batches.move(batch, to)
            if isinstance(made, Batch):
                work.commit()
        if isinstance(made, Refused):
            self.said.setText(
                self.tr("Only what was added is in it: put an owner's meat in, or take it out.")
                if batch.added
                else self.tr("Nothing is in the batch yet.")
            )
            return
        self.refresh()

    def print_sheet(self) -> None:
        """The sheet that goes with the batch."""
        batch = self.batches.chosen()
        if batch is None:
            return
        from printing.batch_sheet import batch_sheet

        with self.bench.store.read() as work:
            recipe, shop = work.recipes.get(batch.recipe_id), work.shop.details()
            shares = work.batches.shares(batch)
        assert recipe is not None
        made, words = self.bench.now(), self.bench.words
        title = words.say("batches.title", number=batch.number)

        def paper() -> bytes:
            return batch_sheet(batch, recipe, shares, shop=shop, made=made, words=words)

        self.bench.work.run(paper, owner=self, then=lambda pdf: self._show_paper(pdf, title))

    def _show_paper(self, pdf: bytes, title: str) -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        self.preview = show_paper(self.bench, pdf, title, "paper", self)

    def _open(self, dialog: "FormDialog") -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.accepted.connect(self._written)
        self.dialog = dialog
        dialog.open()

    def _written(self) -> None:
        made = getattr(self.dialog, "made", None)
        self.refresh(made.id if isinstance(made, Batch) else 0)

    def _chosen(self, batch: Batch | None) -> None:
        self.said.clear()
        gathering = batch is not None and batch.state == "gathering"
        to = _next(batch) if batch is not None else None
        self.put.setEnabled(gathering)
        self.out.setEnabled(gathering and batch is not None and batch.whole_ng > 0)
        self.cure.setEnabled(batch is not None and batch.cure is not None)
        self.sheet.setEnabled(batch is not None)
        self.next.setEnabled(to is not None)
        self.next.setText(self._step_words(to))
        if batch is None:
            self.title.setText(self.tr("No batch"))
            self.facts.setText(self.tr("A batch is one owner's, or of one animal's co-owners."))
            self.nitrite.clear()
            self.meat.show_rows([])
            return
        with self.bench.store.read() as work:
            self._shares = work.batches.shares(batch)
        words = self.bench.words
        self.title.setText(f"{words.say('batches.title', number=batch.number)}: {batch.recipe}")
        self.facts.setText(self._told(batch))
        self.nitrite.setText(nitrite_text(batch.cure, words))
        verdict = nitrite(batch.cure).verdict if batch.cure is not None else "within"
        self.nitrite.set_role("settled" if verdict in GOOD else "contested")
        if batch.cure is None:
            self.nitrite.set_role("quiet")
        elif verdict == "cant_be_checked":
            self.nitrite.set_role("tight")
        self.meat.show_rows([*batch.standing, *batch.added], self.meat.chosen())

    def _step_words(self, to: "BatchState | None") -> str:
        """What the button that moves it on says; within the class, where lupdate sees it."""
        texts = {
            "curing": self.tr("Into c&ure"),
            "smoking": self.tr("Into s&moke"),
            "done": self.tr("Done, &weigh it…"),
            "packed": self.tr("Pac&ked"),
        }
        return texts[to] if to in texts else self.tr("Next stage")

    def _told(self, batch: Batch) -> str:
        words = self.bench.words
        last = batch.stages[-1]
        since = date_text(last.at.astimezone().date(), words.language)
        days = (self.bench.today() - last.at.astimezone().date()).days
        said = [
            self.tr("{state} since {day}, day {number}").format(
                state=capital(words.say(f"batches.state_{batch.state}")),
                day=since,
                number=days + 1,
            ),
            self.tr("{weight} in").format(weight=pounds_text(batch.whole_ng, 2)),
            *(
                self.tr("{weight} of it {what} ({source})").format(
                    weight=weight_text(one.weight), what=one.what, source=one.source
                )
                for one in batch.added
            ),
        ]
        if batch.out is not None and batch.yielded is not None:
            percent = round(batch.yielded * 100)
            said.append(
                self.tr("{weight} finished, {percent} %").format(
                    weight=weight_text(batch.out), percent=percent
                )
            )
        return " · ".join(said)

    def _batch_columns(self) -> list[Column[Batch]]:
        words = self.bench.words
        return [
            Column(
                "number",
                lambda: self.tr("Batch"),
                lambda one: Figure(str(one.number)),
                "figure",
                sort=lambda one: one.number,
                width=72,
            ),
            Column("recipe", lambda: self.tr("Recipe"), lambda one: one.recipe, stretch=True),
            Column(
                "state",
                lambda: self.tr("Stage"),
                lambda one: words.say(f"batches.state_{one.state}"),
                sort=lambda one: STATES.index(one.state),
                width=176,
            ),
            Column(
                "in",
                lambda: self.tr("In"),
                lambda one: figure(pounds_text(one.whole_ng, 1)),
                "figure",
                sort=lambda one: one.whole_ng,
                width=84,
            ),
        ]

    def _meat_columns(self) -> list[Column[Inside]]:
        return [
            Column("owner", lambda: self.tr("Owner"), self._whose, stretch=True),
            Column(
                "order",
                lambda: self.tr("Order"),
                lambda one: "" if isinstance(one, Added) else str(one.order_number),
                width=64,
            ),
            Column("cut", lambda: self.tr("What"), self._what, width=170),
            Column(
                "weight",
                lambda: self.tr("In"),
                lambda one: figure(weight_text(one.weight)),
                "figure",
                width=96,
            ),
            Column("share", lambda: self.tr("Finished"), self._share, "figure", width=96),
        ]

    def _whose(self, one: Inside) -> str:
        """Its owner; of what was added, where it comes from."""
        if isinstance(one, Added):
            return self.tr("Added, from {source}").format(source=one.source)
        return one.owner or self.tr("to be named")

    def _what(self, one: Inside) -> str:
        if isinstance(one, Added):
            return capital(one.what)
        return capital(self.bench.words.name(one.species, f"cut.{one.cut}"))

    def _share(self, one: Inside) -> str | Figure:
        """The order's share, told beside the first of its meat."""
        if isinstance(one, Added):
            return ""
        share = self._shares.get(one.order_id)
        meat = [each for each in self.meat.rows.rows() if isinstance(each, PutIn)]
        first = next((each for each in meat if each.order_id == one.order_id), one)
        return "" if share is None or first.id != one.id else figure(share.text())


def _next(batch: Batch) -> "BatchState | None":
    """What comes after: a batch without a cure goes straight to done."""
    steps: dict[str, BatchState] = {
        "gathering": "curing" if batch.cure is not None else "done",
        "curing": "smoking" if "smoked" in batch.finish else "done",
        "smoking": "done",
        "done": "packed",
    }
    return steps.get(batch.state)
