"""Handing over: what is there and frozen, what is still in cure or smoke, what is owed."""

from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.box_dialog import BoxDialog
from desktop.counter.leaving import Leaving, Told, frozen_words, leaving_rows, shown_name
from desktop.fields import FormDialog, TextField
from desktop.fields.dates import date_text
from desktop.look.patterns import Mark
from desktop.look.space import ROW_DENSE, TOGETHER, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.scan_field import ScanField
from desktop.tables import Column, Figure, RowsModel, TallTable, count_column, figure
from shared.curing.waiting import in_cure
from shared.money import money_text
from shared.shop.hand_overs import HandOver
from shared.shop.orders import Order
from shared.units import pounds_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.curing.batch import Batch
    from shared.shop.money import Balance
    from shared.shop.scanned import Scanned

MOST_NAMED = 3
LEAST_WINDOW, LEAST_TABLE = 696, 212  # of 1366 by 768 pixels, less the bars


class HandOverDialog(FormDialog):
    """Space lets a product stay for a second pick-up; unpaid or not frozen leaves with a reason.

    A scanned box or package ticks what is in it: from the first scan on only that leaves.
    """

    def __init__(self, bench: "Bench", order: Order, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self.widen(1120)
        self._bench = bench
        self._order = order
        self._read()
        self.closed = False
        self.partly = False
        rows = RowsModel(self._columns())
        self.table = TallTable(rows, self, height=ROW_DENSE, sortable=False)
        self.table.setMinimumHeight(self._table_height())
        self.table.setMinimumWidth(760)
        self.stay, self.box, self.slip = button(self), button(self), button(self)
        self.waits = Words("body", "tight", self).wrapped()
        self.frost = Words("body", "tight", self).wrapped()
        self.money = Words("body", parent=self).wrapped()
        self.ticks = Words("body", "quiet", self).wrapped()
        self.ticks.hide()
        self.scan = ScanField(lambda: self.scan_of, self.scanned)
        self.ticked = False
        self.fetched = TextField()
        self.reason = TextField(required=self.held)
        self.grid.add(self.scan)
        self.grid.add(self.fetched)
        self.grid.add(self.reason)
        self._arrange()
        self.retranslate()
        self.table.show_rows(self._rows)

    def _read(self) -> None:
        order = self._order
        with self._bench.store.read() as work:
            self.balance: Balance = work.payments.balance(order.id)
            here = work.hand_overs.left(order.id)
            made = work.packages.of_order(order.id)
            lot = work.lots.get(order.lot_id)
            assert lot is not None
            counted = work.counted.left(order.id)
            places = work.hand_overs.places(order.id)
            self._billed = bool(work.bills.of_order(order.id))
            batches = work.batches.of_order(order.id)
            counts = work.counted.of_lot(order.lot_id)
            self._earlier = work.hand_overs.of_order(order.id)
            self._ready = work.extras.ready_on(order.id)
            self.fresh = work.freezing.agreed_fresh(order.id)
            self._rules = work.freezing.rules()
            told = Told(work.freezing.of_order(order.id), work.freezing.counts_of_order(order.id))
        mine = {one.line for one in order.choices}
        packed = {one.line for one in (*made, *counts) if not one.void}
        self._batches = [one for one in batches if in_cure(order.lot_id, [one], packed) & mine]
        self.scan_of = (order.number, made, here, places)
        packages = [one for one in made if one.id in here]
        now = self._bench.now()
        named = partial(shown_name, self._bench.words, lot.species)
        self._rows = leaving_rows(packages, counted, places, self._rules, told, now, named)

    def _table_height(self) -> int:
        """Seven rows, and in a window higher than the least as many of the rest as it has room for.

        23 products over a window 1008 pixels high: 524 pixels; over the least one: 212.
        """
        over = self.parentWidget()
        room = 0 if over is None else max(over.window().height() - LEAST_WINDOW, 0)
        return min(max((len(self._rows) + 2) * ROW_DENSE, LEAST_TABLE), LEAST_TABLE + room)

    def _arrange(self) -> None:
        beside = row(gap=TOGETHER)
        for one, keys, slot in (
            (self.stay, "Space", self.toggle),
            (self.box, "F8", self.put_in_box),
            (self.slip, "Ctrl+P", self.print_slip),
        ):
            one.setAutoDefault(False)
            one.clicked.connect(slot)
            parent = self.table if keys == "Space" else self
            shortcut = QShortcut(QKeySequence(keys), parent)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)
            beside.addWidget(one)
        beside.addStretch(1)
        buttons = QWidget(self)
        buttons.setLayout(beside)
        for words in (self.ticks, self.waits, self.frost, self.money):
            words.setMinimumHeight(1)  # their height follows from the width they get
        for part in (self.ticks, self.table, buttons, self.waits, self.frost, self.money):
            self.add_below(part)

    @property
    def owes(self) -> bool:
        """Whether something is still due, or there is no bill yet."""
        return self.balance.due > 0 or not self._billed

    @property
    def soft(self) -> "list[Leaving]":
        """What leaves now and isn't frozen."""
        return [one for one in self.leaving if one.frozen.holds]

    @property
    def held(self) -> bool:
        """Whether it leaves only with a reason: unpaid, or not frozen without that being agreed."""
        return self.owes or (bool(self.soft) and not self.fresh)

    @property
    def leaving(self) -> list[Leaving]:
        """What leaves now."""
        return [one for one in self._rows if not one.stays]

    def retranslate(self) -> None:
        owner = self._order.owner or self.tr("to be named")
        packages = sum(one.leave_now for one in self.leaving)
        weight = pounds_text(sum(one.nanograms for one in self.leaving), 2)
        by_count = sum(one.by_count for one in self.leaving)
        said = self.tr("{owner}. Packages: {count}, {weight}. Count them off together.")
        if by_count:
            said = self.tr(
                "{owner}. Packages: {count}, {by_count} of them by count, the others {weight}. "
                "Count them off together."
            )
        self.set_words(
            self.tr("Hand over order {number}").format(number=self._order.number),
            said.format(owner=owner, count=packages, weight=weight, by_count=by_count),
            self.tr("&Hand over"),
            self.tr("&Leave it"),
        )
        self.scan.set_label(self.tr("S&can a box or package"))
        self.fetched.set_label(self.tr("&Fetched by, if another"))
        self.reason.required = self.held
        self.reason.setVisible(self.held)
        self.reason.setEnabled(self.held)
        self.reason.set_label(self._why())
        self.table.set_name(self.tr("Packages that are here"))
        self.table.setColumnHidden(1, not any(one.where for one in self._rows))
        self.stay.setText(self.tr("&Stays for later (Space)"))
        self.box.setText(self.tr("&Box and place… (F8)"))
        self.slip.setText(self.tr("Sli&p to sign (Ctrl+P)"))
        self.ticks.setText(self._ticks())
        self.ticks.setVisible(self.ticked)
        self.waits.setText(self._waiting())
        self.waits.setVisible(bool(self._waiting()))
        self.frost.setText(self._frost())
        self.frost.setVisible(bool(self._frost()))
        self.money.setText(self._money())

    def toggle(self) -> None:
        """The chosen product stays for a second pick-up, or leaves after all."""
        chosen = self.table.chosen()
        if chosen is None:
            return
        at = self._rows.index(chosen)
        self._rows[at] = chosen.toggled()
        self.table.show_rows(self._rows, self._rows[at])
        self.retranslate()

    def scanned(self, found: "Scanned") -> None:
        """What a code stands for leaves; from the first code on, nothing else that is labeled."""
        self._rows = [one.ticked(found.packages, first=not self.ticked) for one in self._rows]
        self.ticked = True
        self.table.show_rows(self._rows)
        self.retranslate()

    def put_in_box(self) -> None:
        """Say in which box the chosen product lies, if in one, and since when it freezes."""
        chosen = self.table.chosen()
        if chosen is None:
            return
        if not chosen.packages and not self._rules.hours:
            self.refuse(self.tr("Wrapped by count: it has no label and goes in no box."))
            return
        self.refuse("")
        self.boxing = BoxDialog(self._bench, chosen, self._rules.hours, self._rows, self)
        self.boxing.accepted.connect(self._again)
        self.boxing.open()

    def _again(self) -> None:
        before = {one.product: (one.going, one.counts_stay) for one in self._rows}
        self._read()
        kept = [(one, *before.get(one.product, (None, False))) for one in self._rows]
        self._rows = [replace(one, going=going, counts_stay=stay) for one, going, stay in kept]
        self.table.show_rows(self._rows)
        self.retranslate()

    def print_slip(self) -> None:
        """The slip with the line to sign."""
        from printing.pick_up import PickedUp, pick_up

        bench, order = self._bench, self._order
        with bench.store.read() as work:
            shop, lot = work.shop.details(), work.lots.get(order.lot_id)
        assert lot is not None
        rows = [
            PickedUp(
                *(one.product, one.leave_now, one.nanograms),
                *(one.where, one.frozen.holds, one.by_count),
            )
            for one in self.leaving
        ]
        fresh = self.fresh
        fetched, waits = self.fetched.text().strip(), [self._batch(one) for one in self._batches]
        made, words = bench.now(), bench.words

        def paper() -> bytes:
            return pick_up(
                rows,
                order_number=order.number,
                owner=order.owner,
                fetched_by=fetched,
                waits=waits,
                agreed_fresh=fresh,
                regime=lot.regime,
                shop=shop,
                made=made,
                words=words,
            )

        title = words.say("boxes.pick_up", number=order.number)
        bench.work.run(paper, owner=self, then=lambda pdf: self._show(pdf, title))

    def _show(self, pdf: bytes, title: str) -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        self.preview = show_paper(self._bench, pdf, title, "paper", self)

    def attempt(self) -> str:
        fetched, reason = self.fetched.value() or "", self.reason.value() or ""
        ids = [each.id for one in self.leaving for each in one.now]
        counts = [each.id for one in self.leaving for each in one.counts_now]
        whole = all(one.whole for one in self._rows) and not self._batches
        if not (ids or counts or whole):
            return self.tr("Nothing leaves: choose what is fetched now.")
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if ids or counts:
                unfrozen = sum(one.leave_now for one in self.soft)
                given = work.hand_overs.give(
                    self._order.id, ids, fetched, reason, unfrozen=unfrozen, counted_ids=counts
                )
                if not isinstance(given, HandOver):
                    return self.tr("Another station has handed some of it over: look again.")
            if whole:
                said = "; ".join(one for one in (reason, fetched) if one)
                moved = work.orders.move(
                    self._order.id, "handed_over", reason=said, version=self._order.version
                )
                if not isinstance(moved, Order):
                    return self.tr("It isn't ready, or another station has changed it: look again.")
                done = work.orders.close(moved.id, version=moved.version)
                self.closed = isinstance(done, Order)
            self.partly = not whole
            work.commit()
        return ""

    def _ticks(self) -> str:
        """How many of the labelled packages are scanned, and what becomes of the others."""
        now = sum(len(one.now) for one in self._rows)
        here = sum(len(one.packages) for one in self._rows)
        if now == here:
            return self.tr("Labeled packages scanned: all {here}.").format(here=here)
        said = self.tr("Scanned: {now} of {here} labeled packages. The others stay here.")
        return said.format(now=now, here=here)

    def _waiting(self) -> str:
        said = [
            self.tr("Comes later: {what}.").format(what=self._batch(one)) for one in self._batches
        ]
        if self._earlier:
            last = self._earlier[-1]
            day = date_text(last.at.astimezone().date(), self._bench.words.language)
            text = self.tr("Some of it was fetched before, last on {day} by {whom}.")
            whom = last.fetched_by or self._order.owner
            said.insert(0, text.format(day=day, whom=whom))
        return " ".join(said)

    def _why(self) -> str:
        soft = bool(self.soft) and not self.fresh
        if soft and self.owes:
            return self.tr("&Why it leaves unpaid and not frozen")
        return self.tr("&Why it leaves not frozen") if soft else self.tr("&Why it leaves unpaid")

    def _frost(self) -> str:
        """What of it isn't frozen; that it was agreed so; or that nothing is held for it."""
        if not self.soft:
            return ""
        names = ", ".join(one.product for one in self.soft[:MOST_NAMED])
        more = len(self.soft) - MOST_NAMED
        if more > 0:
            names = self.tr("{names} and {count} more").format(names=names, count=more)
        if self.fresh:
            return self.tr("Fetched fresh, as agreed on the order: {names}.").format(names=names)
        return self.tr(
            "Not frozen: {names}. It is held. F8 says since when it freezes, or that it is "
            "frozen; Space lets it stay for another pick-up."
        ).format(names=names)

    def _batch(self, one: "Batch") -> str:
        words = self._bench.words
        state = words.say(f"batches.state_{one.state}")
        return words.say("boxes.in_batch", number=one.number, recipe=one.recipe, state=state)

    def _money(self) -> str:
        said = self.tr("No bill yet.")
        if self._billed:
            said = self.tr("Billed {billed}, paid {paid}, due {due}.").format(
                billed=money_text(self.balance.billed - self.balance.credited),
                paid=money_text(self.balance.deposits + self.balance.paid),
                due=money_text(self.balance.due),
            )
            if self.balance.due > 0:
                said += " " + self.tr("F7 on the order takes the payment.")
        return " ".join(one for one in (said, self._stored()) if one)

    def _stored(self) -> str:
        """Since when it waits to be fetched, where that is a day or more."""
        days = 0 if self._ready is None else (self._bench.today() - self._ready).days
        if self._ready is None or days <= 0:
            return ""
        day = date_text(self._ready, self._bench.words.language)
        text = self.tr("Ready since {day}, {count} days; storage is billed in the Office (F11).")
        if days == 1:
            text = self.tr("Ready since {day}, one day; storage is billed in the Office (F11).")
        return text.format(day=day, count=days)

    def _leaves(self, one: Leaving) -> str:
        if one.stays:
            return self.tr("stays")
        if one.whole:
            return self.tr("leaves")
        return self.tr("{now} of {here}").format(now=one.leave_now, here=one.here)

    def _pounds(self, one: Leaving) -> str | Figure:
        """What is here of it, as far as it was weighed."""
        if not one.packages:
            return self.tr("by count")
        pounds = pounds_text(sum(each.net.nanograms for each in one.packages), 2)
        return f"{pounds} +" if one.counted else figure(pounds)

    def _columns(self) -> list[Column[Leaving]]:
        return [
            Column("product", lambda: self.tr("Package"), lambda one: one.product, stretch=True),
            Column("where", lambda: self.tr("Box, place"), lambda one: one.where, width=150),
            Column(
                "frozen",
                lambda: self.tr("Freezer"),
                lambda one: frozen_words(one, self._bench.words.language),
                "state",
                mark=lambda one: Mark.TIGHT if one.frozen.holds else Mark.PLAIN,
                width=265,
            ),
            Column(
                "leaves",
                lambda: self.tr("Now"),
                self._leaves,
                "state",
                mark=lambda one: Mark.SETTLED if one.whole else Mark.OPEN,
                width=130,
            ),
            count_column("packages", lambda: self.tr("Packages"), lambda one: one.here, width=90),
            Column("pounds", lambda: self.tr("Pounds"), self._pounds, "figure", width=100),
        ]
