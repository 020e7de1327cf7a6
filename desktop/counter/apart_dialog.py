"""Two that were joined and aren't one person: taken apart, with what was written for each."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.customer_names import customer_words
from desktop.counter.join_words import goes_back
from desktop.fields import ChoiceField, FormDialog
from desktop.fields.dates import moment_text
from desktop.panels.heading import Words
from shared.shop.customers import Customer

if TYPE_CHECKING:
    from collections.abc import Sequence

    from desktop.bench import Bench
    from shared.shop.customers import JoinedEntry


class ApartDialog(FormDialog):
    """Asks which joined entry stands alone again; the last that was joined is offered."""

    def __init__(
        self, bench: "Bench", joined: "Sequence[JoinedEntry]", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent, columns=2)
        self.widen(840)
        self._bench = bench
        self._joined = {one.id: one for one in joined}
        self.entry: ChoiceField[int] = ChoiceField(self, required=True)
        self.grid.add(self.entry, 2)
        self.what = Words("body", parent=self).wrapped()
        self.add_below(self.what)
        self.entry.changed.connect(self._show_what)
        self.retranslate()
        self.entry.set_value(next(iter(self._joined), None))
        self._show_what()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Take two entries apart"),
            self.tr(
                "Who was joined into another entry stands alone again. What was written since "
                "for the entry that stayed is left with that."
            ),
            self.tr("&Take apart"),
            self.tr("&Leave it"),
        )
        self.entry.set_label(self.tr("Who &stands alone again"))
        words = self.tr("{name}, joined into {into}")
        self.entry.set_choices(
            [
                (
                    one.id,
                    words.format(
                        name=customer_words(one.name, one.phone),
                        into=customer_words(one.into_name, one.into_phone),
                    ),
                )
                for one in self._joined.values()
            ]
        )
        self._show_what()

    def attempt(self) -> str:
        chosen = self.entry.value()
        if chosen is None:
            return ""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.customers.take_apart(chosen)
            if isinstance(found, Customer):
                work.commit()
                return ""
        return self.tr("It stands alone already.")

    def name(self) -> str:
        """Who was taken apart."""
        one = self._joined.get(self.entry.value() or 0)
        return "" if one is None else customer_words(one.name, one.phone)

    def _show_what(self) -> None:
        one = self._joined.get(self.entry.value() or 0)
        self.what.setVisible(one is not None)
        if one is None:
            return
        said: list[str] = []
        if one.at is not None:
            when = moment_text(one.at, self._bench.words.language)
            said.append(self.tr("Joined by {who} on {when}.").format(who=one.by, when=when))
        with self._bench.store.read() as work:
            said.append(goes_back(work.customers.held_by(one.id)))
        self.what.setText("\n".join(said))
