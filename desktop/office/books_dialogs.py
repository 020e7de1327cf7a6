"""The drawer counted: what is in it beside what the books expect, and why they differ."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, MoneyField, TextField
from desktop.office.money_words import complaint
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
            self.tr("The books expect {sum}.").format(sum=money_text(self.expected)),
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
