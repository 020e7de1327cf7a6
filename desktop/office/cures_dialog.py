"""What the shop's cures and seasonings are made of; a label of such goods must say it."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, TextField

if TYPE_CHECKING:
    from desktop.bench import Bench

FINISHES = ("cured_smoked", "cured", "fully_cooked", "seasoned", "marinated")


class CuresDialog(FormDialog):
    """Ingredients and allergens of each finish, kept beside the shop's own names."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.ingredients = {one: TextField(self, most=400) for one in FINISHES}
        self.allergens = {one: TextField(self) for one in FINISHES}
        with bench.store.read() as work:
            known = work.shop.own_names(bench.words.language)
        for one in FINISHES:
            self.grid.add(self.ingredients[one])
            self.grid.add(self.allergens[one])
            self.ingredients[one].set_value(known.get(f"recipe.{one}.ingredients", ""))
            self.allergens[one].set_value(known.get(f"recipe.{one}.allergens", ""))
        self.setMinimumWidth(860)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Cures and seasonings"),
            self.tr(
                "As the packet or recipe has them, commas between. Write - under allergens "
                "where there are none; left empty means not known, and no label is printed."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        for one in FINISHES:
            name = self.bench.words.name("pork", f"finish.{one}")
            self.ingredients[one].set_label(self.tr("{name}: made of").format(name=name))
            self.allergens[one].set_label(self.tr("{name}: allergens").format(name=name))

    def attempt(self) -> str:
        language = self.bench.words.language
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            for one in FINISHES:
                made_of = self.ingredients[one].value() or ""
                allergens = self.allergens[one].value() or ""
                work.shop.name(language, f"recipe.{one}.ingredients", made_of)
                work.shop.name(language, f"recipe.{one}.allergens", allergens)
            work.commit()
        return ""
