"""What only ground and seasoned lines ask: the seasoning, what is ground in, what leaner gives."""

from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.fields import ChoiceField, CountField, TextField
from desktop.panels.heading import Words
from shared.cutting.grinds import grinds_for
from shared.cutting.order import Added, Stock
from shared.units import pounds_text

if TYPE_CHECKING:
    from desktop.fields.grid import FieldGrid
    from shared.carcass.catalogue import Catalogue, Cut
    from shared.cutting.answer import Answer
    from shared.cutting.order import Choice

STOCKS: tuple[Stock, ...] = ("pork_fat", "pork_trim", "beef_fat")


class GroundFields:
    """Fields that a line dialog shows for cuts drawn from the trim."""

    def __init__(self, grid: "FieldGrid") -> None:
        self._grid = grid
        self.seasoning = TextField(most=60)
        self.stock = ChoiceField[str]()
        self.part = CountField(least=1, most=99)
        self.gives = Words("small", "quiet").wrapped()
        for field in (self.seasoning, self.stock, self.part):
            grid.add(field)
        grid.add_widget(self.gives)
        self.stock.changed.connect(self._stock_changed)

    def retranslate(self) -> None:
        """Set every word again."""
        translate = QCoreApplication.translate
        self.seasoning.set_label(translate("GroundFields", "&Seasoning"))
        self.stock.set_label(translate("GroundFields", "&Grind in"))
        self.part.set_label(translate("GroundFields", "Part of it, per cent"))
        self.part.hint(translate("GroundFields", "empty: to the lean asked"))
        self.stock.set_choices([("", translate("GroundFields", "nothing")), *stock_words()])

    def show(self, choice: "Choice") -> None:
        """Show what a line has of these."""
        self.seasoning.set_value(choice.seasoning or None)
        self.stock.set_value("" if choice.added is None else choice.added.of)
        share = None if choice.added is None else choice.added.share
        self.part.set_value(None if share is None else int(share * 100))

    def fit(self, cut: "Cut") -> None:
        """Only what means something for the cut."""
        ground = cut.kind == "pool" and "lean" in cut.pools
        seasoned = cut.batch is not None or "seasoned" in cut.finishes
        wanted = {
            self.seasoning: ground and seasoned,
            self.stock: ground,
            self.part: ground and bool(self.stock.value()),
        }
        for field, shown in wanted.items():
            field.setVisible(shown)
            field.setEnabled(shown)
        self.gives.setVisible(ground and bool(self.gives.text()))

    def say_gives(
        self, choice: "Choice", cut: "Cut", answer: "Answer | None", catalogue: "Catalogue"
    ) -> None:
        """The pounds this line's trim comes to at each usual lean."""
        self.gives.setText("")
        if answer is None or cut.lean_percent is None:
            return
        found = grinds_for(answer, choice.line, choice.share, catalogue.leanest)
        shown = [
            f"{int(one.lean * 100)} %: {pounds_text(one.most_ng)}" for one in found if one.most_ng
        ]
        if shown:
            said = QCoreApplication.translate(
                "GroundFields", "The trim gives at most, by lean: {all}"
            )
            self.gives.setText(said.format(all=" · ".join(shown)))

    def taken(self, choice: "Choice") -> "Choice":
        """The line with what these fields say."""
        added = None
        for stock in STOCKS:
            if self.stock.isEnabled() and self.stock.value() == stock:
                percent = self.part.value() if self.part.isEnabled() else None
                added = Added(stock, None if percent is None else Fraction(percent, 100))
        seasoning = self.seasoning.value() if self.seasoning.isEnabled() else None
        return replace(choice, added=added, seasoning=seasoning or "")

    def _stock_changed(self) -> None:
        shown = bool(self.stock.value())
        self.part.setVisible(shown)
        self.part.setEnabled(shown)
        self._grid.close_up()


def stock_words() -> list[tuple[str, str]]:
    """What may be ground in, in words."""
    translate = QCoreApplication.translate
    return [
        ("pork_fat", translate("GroundFields", "pork fat")),
        ("pork_trim", translate("GroundFields", "pork trim")),
        ("beef_fat", translate("GroundFields", "beef fat")),
    ]
