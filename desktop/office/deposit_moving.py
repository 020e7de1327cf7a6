"""A deposit moved from one order to another in one step: asked, kept on both, and said."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, MoneyField
from desktop.fields.dates import date_text
from desktop.office.money_words import complaint
from shared.billing.problems import BillingProblem
from shared.money import money_text
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.office.billing import Billing
    from shared.shop.lists import OrderRow

MOST = 200
"""Open orders of one customer that are offered."""
LAST_NUMBER = 99_999_999


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is to be moved, and to which order."""

    cents: int
    to: "OrderRow"


class MoveDialog(FormDialog):
    """`find` reads an order by its number; `keep` moves it and says "" or why it can't be."""

    def __init__(
        self,
        billing: "Billing",
        held: int,
        offered: "tuple[OrderRow, ...]",
        tell: "Callable[[OrderRow], str]",
        find: "Callable[[int], OrderRow | None]",
        keep: Callable[[Wanted], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=2)
        self._billing, self._held, self._offered = billing, held, offered
        self._say, self._find, self._keep = tell, find, keep
        self._asked = ""
        self.amount = MoneyField(self, required=True)
        self.to: ChoiceField[int] = ChoiceField(self)
        self.number = CountField(self, least=1, most=LAST_NUMBER)
        self.grid.add(self.to, span=2)
        self.grid.add(self.amount)
        self.grid.add(self.number)
        self.retranslate()
        self.amount.set_value(held)
        if offered:
            self.to.set_value(offered[0].id)
        else:
            self.to.hide()
            self.grid.close_up()

    def retranslate(self) -> None:
        order = self._billing.order
        self.set_words(
            self.tr("Move a deposit"),
            self.tr("{amount} is held on order {number}, {owner}. No money changes hands.").format(
                amount=money_text(self._held), number=order.number, owner=order.owner
            ),
            self.tr("&Move it"),
            self.tr("&Leave it"),
        )
        self.amount.set_label(self.tr("&Amount"))
        self.to.set_label(self.tr("&To the customer's order"))
        self.to.set_choices([(one.id, self._say(one)) for one in self._offered])
        self.number.set_label(
            self.tr("&Or to the order of this number") if self._offered else self.tr("To &order")
        )

    def attempt(self) -> str:
        cents, to = self.amount.value(), self._to()
        if to is None or cents is None:
            return ""
        doubt = self._doubt(to)
        if doubt and doubt != self._asked:
            self._asked = doubt
            return doubt
        return self._keep(Wanted(cents, to))

    def _to(self) -> "OrderRow | None":
        """The order meant: the number, where one is typed; None where the fields say why."""
        number = self.number.value()
        if number is not None:
            found = self._find(number)
            if found is None:
                self.number.complain(self.tr("There is no order {number}.").format(number=number))
            elif found.id == self._billing.order.id:
                self.number.complain(self.tr("It is held on that order already."))
                return None
            return found
        chosen = self.to.value()
        if chosen is None:
            self.number.complain(self.tr("Say which order."))
        return next((one for one in self._offered if one.id == chosen), None)

    def _doubt(self, to: "OrderRow") -> str:
        """Another customer's order is asked about first."""
        order = self._billing.order
        if to.customer_id is not None and to.customer_id == order.customer_id:
            return ""
        return self.tr(
            "Order {number} is {other}'s: what {owner} paid would be {other}'s. Move it again if "
            "that is meant."
        ).format(
            number=to.number,
            other=to.owner or self.tr("the producer"),
            owner=order.owner or self._billing.lot.producer,
        )


class DepositMoving(QObject):
    """Asks and moves.

    Signals:
        said: what was moved. changed: money was kept.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget) -> None:
        super().__init__(parent)
        self.bench, self._over = bench, parent
        self.dialog: MoveDialog | None = None

    def begin(self, billing: "Billing | None") -> None:
        """Ask how much goes where."""
        if billing is None or billing.for_producer:
            return
        order = billing.order
        with self.bench.store.read() as work:
            held = work.payments.held(order.id)
            mine: tuple[OrderRow, ...] = ()
            if order.customer_id is not None:
                mine = work.orders.list(
                    customer_id=order.customer_id, closed=False, descending=True, limit=MOST
                )
        if held <= 0:
            self.bench.messages.tell(
                self.tr("Move a deposit"),
                self.tr("Nothing is held on order {number}.").format(number=order.number),
            )
            return
        offered = tuple(one for one in mine if one.id != order.id)
        self.dialog = MoveDialog(
            billing,
            held,
            offered,
            self._told,
            self._numbered,
            lambda wanted: self._keep(billing, wanted),
            self._over,
        )
        self.dialog.open()

    def _told(self, row: "OrderRow") -> str:
        words = self.bench.words
        animal = " ".join((words.name("", f"species.{row.species}"), row.tags)).strip()
        return self.tr("Order {number}, {animal}, {day}").format(
            number=row.number, animal=animal, day=date_text(row.day, words.language)
        )

    def _numbered(self, number: int) -> "OrderRow | None":
        with self.bench.store.read() as work:
            order_id = work.orders.numbered(number)
            rows = () if order_id is None else work.orders.list(only=(order_id,), limit=1)
        return next(iter(rows), None)

    def _keep(self, billing: "Billing", wanted: Wanted) -> str:
        order, to = billing.order, wanted.to
        notes = (
            self.tr("to order {number}").format(number=to.number),
            self.tr("from order {number}").format(number=order.number),
        )
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            moved = work.payments.move(order.id, to.id, wanted.cents, notes)
            if not isinstance(moved, Refused):
                work.commit()
        if isinstance(moved, Refused):
            return self._refused(moved)
        said = self.tr("{amount} moved from order {number} to order {other}, {owner}.")
        self.said.emit(
            said.format(
                amount=money_text(wanted.cents),
                number=order.number,
                other=to.number,
                owner=to.owner,
            )
        )
        self.changed.emit()
        return ""

    def _refused(self, why: Refused) -> str:
        if why.code == "order_closed":
            return self.tr("That order is closed or its booking cancelled; choose another.")
        data = why.data
        if why.code == "more_than_owed":
            data = {key: money_text(int(cents)) for key, cents in data.items()}
        return complaint(BillingProblem(why.code, data))
