"""Counter, the place: orders by day, booking, the cut order, handing over."""

from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QWidget

from desktop.bench import Target
from desktop.counter import joining
from desktop.counter.beforehand import read_beforehand
from desktop.counter.book_dialog import BookDialog, kinds
from desktop.counter.booking_dialog import BookingDialog, free_place
from desktop.counter.calls_dialog import CallsDialog
from desktop.counter.customer_dialog import CustomerDialog, customer_of
from desktop.counter.day_room import FURTHER
from desktop.counter.form_desk import order_form
from desktop.counter.hand_over_dialog import HandOverDialog
from desktop.counter.name_dialog import NameDialog
from desktop.counter.order_dialogs import OrderDialogs
from desktop.counter.order_list import OrderList
from desktop.counter.order_papers import show_confirmation, show_receipt
from desktop.counter.order_view import OrderView
from desktop.counter.payment_dialog import PaymentDialog
from desktop.counter.refusal_words import problem_words
from desktop.counter.release import make_sheet, sheet_asked, store_sheet, why_not
from desktop.drafts import keep_draft, restore
from desktop.look.space import column
from desktop.places import Place
from shared.money import money_text
from shared.shop.states import order_moves

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.release import SheetAsked
    from desktop.fields import FormDialog
    from shared.shop.calendar import Waiting
    from shared.shop.lists import OrderRow
    from shared.shop.states import OrderState

BOOKING = "booking"  # what a half-typed booking is called in the journal
WAITS = "waits"  # and the row of the waiting list it was begun from


class CounterPlace(Place):
    """Book an animal, take the cut order by phone, hand over the boxes, take the money."""

    key = "counter"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self.list = OrderList(bench, self)
        self.order = OrderView(bench, self)
        self._pages = QStackedWidget(self)
        self._pages.addWidget(self.list)
        self._pages.addWidget(self.order)
        column(self).addWidget(self._pages)
        self.dialog: FormDialog | None = None
        self._fresh = True
        self._connect()
        self.retranslate()

    def title(self) -> str:
        return self.tr("Counter")

    def first_focus(self) -> QWidget:
        return self.order.table if self._shows_order() else self.list.first_focus()

    def refresh(self) -> None:
        self.list.refresh()
        self.order.reload()
        if self._fresh:
            self._fresh = False
            read = (read_beforehand, self.bench.store, self.bench.today(), kinds(), FURTHER)
            self.bench.work.run(*read, then=lambda _done: None, key="counter.beforehand")
            self._go_on_typing()

    def _go_on_typing(self) -> None:
        """After a kill: the booking or the order that was being typed, with what was typed."""
        if self.bench.journal.found(BOOKING) is not None:
            self.book()
            return
        order_id = OrderDialogs.waiting(self.bench)
        if order_id:
            with self.bench.store.read() as work:
                order = work.orders.get(order_id)
            if order is not None:
                self.show_order(order.lot_id, order.id)

    def open(self, what: "Target") -> None:
        """Show an order, the first order of a lot, or the orders of a customer."""
        with self.bench.store.read() as work:
            lot_id, order_id = what.lot_id, 0
            if what.kind == "order":
                order = work.orders.get(what.id)
                lot_id, order_id = (None, 0) if order is None else (order.lot_id, order.id)
            elif what.kind == "customer":
                rows = work.customers.orders(what.id)
                here = next((one for one in rows if not one.closed), rows[0] if rows else None)
                if here is not None:
                    lot_id, order_id = here.lot_id, here.id
            elif what.kind == "lot":
                lot_id = what.id
            if lot_id is not None and not order_id:
                orders = work.orders.of_lot(lot_id)
                order_id = orders[0].id if orders else 0
        if lot_id is not None and order_id:
            self.show_order(lot_id, order_id)

    def at_hand(self) -> "Target | None":
        desk = self.order.desk if self._shows_order() else None
        return None if desk is None else Target(self.key, "order", desk.order.id, desk.lot.id)

    def show_order(self, lot_id: int, order_id: int) -> None:
        """Open an order."""
        self.unsay()
        self.order.show_order(lot_id, order_id)
        self.order.refuse("")
        self._pages.setCurrentWidget(self.order)
        self.order.table.setFocus()
        self.order.restore_draft()

    def retranslate(self) -> None:
        self.list.retranslate()
        self.order.retranslate()

    def book(self, waits: "Waiting | None" = None) -> None:
        """Ask for a booking; who waits for it is filled in."""
        typed = self.bench.journal.found(BOOKING)
        if typed is not None:
            waits = self._waited(int(typed.get(WAITS, "0")))
        dialog = BookDialog(self.bench, self, waits)
        self.dialog = dialog
        dialog.accepted.connect(lambda: self._booked(dialog))
        if typed is not None:
            restore(dialog, typed)
        also = {} if waits is None else {WAITS: str(waits.id)}
        keep_draft(self.bench.journal, BOOKING, dialog, also, begun=waits is not None)
        dialog.open()

    def _waited(self, waiting_id: int) -> "Waiting | None":
        with self.bench.store.read() as work:
            return next((one for one in work.waiting.list() if one.id == waiting_id), None)

    def ring(self) -> None:
        """Who is to be rung."""
        dialog = CallsDialog(self.bench, self)
        self.dialog = dialog
        dialog.picked.connect(lambda row: self.show_order(row.lot_id, row.id))
        dialog.book.connect(self.book)
        dialog.open()

    def weights(self) -> None:
        """What the day's shares weigh, to tell their owners."""
        from desktop.counter.weights_dialog import WeightsDialog

        self.dialog = WeightsDialog(self.bench, self)
        self.dialog.open()

    def join(self) -> None:
        """Two entries that are one person."""
        self.dialog = joining.join(self)

    def take_apart(self) -> None:
        """Two that were joined and aren't one person."""
        self.dialog = joining.take_apart(self) or self.dialog

    def _booked(self, dialog: BookDialog) -> None:
        if dialog.lot is None:
            return
        self.list.refresh()
        self.changed.emit()
        self.said.emit(self.tr("Booked as lot {number}.").format(number=dialog.lot.number))
        self.show_order(dialog.lot.id, dialog.lot.shares[0].order_id)
        if dialog.lot.shares[0].deposit_asked:
            self._take_payment()

    def _connect(self) -> None:
        self.list.book.connect(self.book)
        self.list.picked.connect(self._picked)
        self.order.left.connect(self._back)
        self.order.changed.connect(self.changed)
        self.order.said.connect(self.say_of_shown)
        turned = (self.order.chips.chosen, self.order.stage.opened, self.order.left)
        for gone in (*turned, self.order.changed):  # Ctrl+Z now takes back something else
            gone.connect(self.unsay)
        self.order.wanted.connect(self._step)
        self.list.ring_button.clicked.connect(self.ring)
        self.list.weights_button.clicked.connect(self.weights)
        for keys, does in (
            ("Ctrl+J", self.join),
            ("Ctrl+Shift+J", self.take_apart),
            ("Ctrl+R", self.ring),
            ("Ctrl+W", self.weights),
            ("Ctrl+N", self.book),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(does)

    def _picked(self, row: "OrderRow") -> None:
        self.show_order(row.lot_id, row.id)

    def _back(self) -> None:
        self.list.refresh()
        self._pages.setCurrentWidget(self.list)
        self.list.first_focus().setFocus()

    def _shows_order(self) -> bool:
        return self._pages.currentWidget() is self.order

    def _step(self, what: str) -> None:
        desk = self.order.desk
        if desk is None:
            return
        if what == "payment":
            self._take_payment()
        elif what == "name":
            self._name_owner()
        elif what == "customer":
            self._change_customer()
        elif what == "booking":
            self._change_booking()
        elif what == "note":
            self.dialog = self.order.dialogs.ask_note(desk)
        elif what == "take_back":
            self._take_back()
        elif what == "confirmation":
            show_confirmation(self.bench, desk, self)
        elif what in ("form", "read_form"):
            self.dialog = order_form(what, self.bench, self.order) or self.dialog
        elif what == "hand_over" or desk.order.state == "ready":
            self._hand_over()
        elif desk.order.state == "open":
            self._settle()
        elif desk.order.state in ("settled", "released"):
            self._release()

    def _settle(self) -> None:
        desk = self.order.desk
        if desk is None:
            return
        why = why_not(desk, self.bench.words, settling=True)
        problem = desk.move("settled") if not why else None
        self.order.refuse(why or ("" if problem is None else problem_words(problem)))
        if not why and problem is None:
            self.unsay()
        self.order.show_again()
        self.changed.emit()

    def _release(self) -> None:
        desk = self.order.desk
        if desk is None:
            return
        why = why_not(desk, self.bench.words)
        self.order.refuse(why)
        if not why:
            asked = sheet_asked(desk, self.bench)
            self.said.emit(self.tr("Making the sheet for the block…"))
            self.bench.work.run(
                make_sheet, asked, then=lambda pdf: self._released(asked, pdf), key="counter.sheet"
            )

    def _released(self, asked: "SheetAsked", pdf: bytes) -> None:
        sheet = store_sheet(asked, pdf, self.bench)
        if sheet is None:
            self.order.refuse(self.tr("The order changed meanwhile: look again and release it."))
            return
        self.said.emit(self.tr("Sheet {number} is at the block.").format(number=sheet.number))
        self.order.reload()
        self.changed.emit()
        if not self.isVisible():  # gone on to another place: no paper comes over that
            return
        from desktop.preview import show_paper

        show_paper(
            self.bench,
            pdf,
            self.tr("Block sheet {number}").format(number=sheet.number),
            parent=self,
        )

    def _take_payment(self) -> None:
        desk = self.order.desk
        if desk is None:
            return
        dialog = PaymentDialog(self.bench, desk.order, self)
        self.dialog = dialog
        dialog.accepted.connect(lambda: self._paid(dialog))
        dialog.open()

    def _paid(self, dialog: PaymentDialog) -> None:
        taken = sum(one.cents for one in dialog.payments)
        said = self.tr("{amount} taken.").format(amount=money_text(taken))
        if dialog.change:
            said += " " + self.tr("Give back {change}.").format(change=money_text(dialog.change))
        desk = self.order.desk
        if desk is not None:
            if dialog.is_deposit and dialog.payments:
                show_receipt(self.bench, desk.order, dialog.payments[-1], self)
            desk.load()
            if desk.order.state == "handed_over" and desk.order.closed_at is None and desk.close():
                said += " " + self.tr("The order is closed.")
        self.said.emit(said)
        self._show_changed()

    def _name_owner(self) -> None:
        desk = self.order.desk
        if desk is None:
            return
        dialog = NameDialog(self.bench, desk.lot, desk.share, self)
        self.dialog = dialog
        dialog.accepted.connect(self._show_changed)
        dialog.open()

    def _change_customer(self) -> None:
        """Address, mail, language and what else is kept of the owner."""
        desk = self.order.desk
        customer = None if desk is None else customer_of(self.bench, desk.order.customer_id)
        if customer is None:
            self.order.refuse(self.tr("Nobody is named yet: F11 names the owner."))
            return
        self.dialog = CustomerDialog(self.bench, customer, self)
        self.dialog.accepted.connect(self._show_changed)
        self.dialog.open()

    def _change_booking(self) -> None:
        """Day, producer, owners and what else was booked; or cancel it all."""
        desk = self.order.desk
        if desk is None:
            return
        dialog = BookingDialog(self.bench, desk.lot.id, self)
        self.dialog = dialog
        dialog.accepted.connect(lambda: self._booking_changed(dialog))
        dialog.open()

    def _booking_changed(self, dialog: BookingDialog) -> None:
        number = dialog.lot.number
        if dialog.lot.cancelled:
            self.said.emit(self.tr("Lot {number} is cancelled.").format(number=number))
            self._back()
            self.changed.emit()
            free_place(self.bench, dialog.lot)
            return
        self.said.emit(self.tr("Booking of lot {number} changed.").format(number=number))
        self._show_changed()

    def _take_back(self) -> None:
        """One state back, with a reason: only what the counter itself has moved on."""
        desk = self.order.desk
        if desk is None:
            return
        back = next(
            (one for one in order_moves(desk.order.state) if one.back and one.place == "counter"),
            None,
        )
        if back is None:
            self.order.refuse(self.tr("The counter has nothing to take back here."))
            return
        state = self.bench.words.say(f"state.{back.end}")
        reason = self.bench.messages.ask_reason(
            self.tr("Take the order back"),
            self.tr("Why does it go back to {state}?").format(state=state),
        )
        if reason:
            problem = desk.move(cast("OrderState", back.end), reason)
            self.order.refuse("" if problem is None else problem_words(problem))
            self._show_changed()

    def _hand_over(self) -> None:
        desk = self.order.desk
        if desk is None:
            return
        if desk.order.state != "ready":
            self.order.refuse(self.tr("It is handed over once Wrap has said it is ready."))
            return
        dialog = HandOverDialog(self.bench, desk.order, self)
        self.dialog = dialog
        dialog.accepted.connect(lambda: self._handed_over(dialog))
        dialog.open()

    def _handed_over(self, dialog: HandOverDialog) -> None:
        said = self.tr("Handed over and closed.") if dialog.closed else self.tr("Handed over.")
        if dialog.partly:
            said = self.tr("Some of it is handed over; the rest waits for another pick-up.")
        self.said.emit(said)
        self._show_changed()

    def _show_changed(self) -> None:
        self.order.reload()
        self.changed.emit()
