"""The drawer: counted, beside what the books expect, and its cash carried to the bank."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, MoneyField, TextField
from desktop.office.money_words import complaint
from desktop.paid_day import PaidDay, open_days
from shared.money import money_text
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench


class DrawerDialog(FormDialog):
    """Keeps a count; a difference needs a reason."""

    def __init__(self, bench: "Bench", expected: int, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.bench, self.expected = bench, expected
        self.counted = MoneyField(self, required=True)
        self.reason = TextField(self)
        self.grid.add(self.counted)
        self.grid.add(self.reason)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Count the drawer"),
            self.tr(
                "The books expect {sum}. Cash that went to the bank is no shortage: say it first, "
                "under Cash to the bank."
            ).format(sum=money_text(self.expected)),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.counted.set_label(self.tr("&Counted"))
        self.reason.set_label(self.tr("&Reason, if it differs"))

    def attempt(self) -> str:
        counted = self.counted.value()
        if counted is None:
            return self.tr("Say what is in the drawer.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            done = work.ledger.count_drawer(counted, self.reason.value() or "")
            if not isinstance(done, Refused):
                work.commit()
                return ""
        if done.code == "reason_missing":
            off = money_text(int(done.data["difference"]))
            return self.tr("It differs by {sum}; say why.").format(sum=off)
        if done.code == "period_closed":
            return self.tr("Today lies in a closed period.")
        return complaint(done)


class BankDialog(FormDialog):
    """Keeps cash carried to the bank or fetched from it; neither is taken or spent."""

    def __init__(self, bench: "Bench", there: int, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench, self._there = bench, there
        self.amount = MoneyField(self, required=True)
        self.way: ChoiceField[str] = ChoiceField(self, required=True)
        self.day = PaidDay(open_days(bench), self)
        self.note = TextField(self, required=True)
        for field in (self.amount, self.way, self.day, self.note):
            self.grid.add(field)
        self.retranslate()
        self.way.set_value("to")

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Cash to the bank"),
            self.tr("The books have {sum} in the drawer.").format(sum=money_text(self._there)),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.amount.set_label(self.tr("&Amount"))
        self.way.set_label(self.tr("&Which way"))
        self.way.set_choices(
            [
                ("to", self.tr("from the drawer to the bank")),
                ("from", self.tr("from the bank to the drawer, as change")),
            ]
        )
        self.day.retranslate()
        self.note.set_label(self.tr("&Note, e.g. the number of the slip"))

    def attempt(self) -> str:
        cents, back = self.amount.value(), self.way.value() == "from"
        if not cents:
            self.amount.complain(self.tr("Say an amount above nothing."))
            return ""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            done = work.ledger.move_cash(
                -cents if back else cents, self.note.value() or "", day=self.day.said()
            )
            if not isinstance(done, Refused):
                work.commit()
                return ""
        if done.code == "more_than_there":
            there = money_text(int(done.data["there"]))
            self.amount.complain(self.tr("Only {sum} is there.").format(sum=there))
            return ""
        return complaint(done)
