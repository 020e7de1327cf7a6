"""The shop's recipes: for labels, and for batches in cure, smoke and the mixer."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.look.patterns import Mark
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.recipe_dialog import RecipeDialog
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table
from printing.words.place_words import capital
from shared.curing.recipe import Recipe, allergens, in_order_of_weight

if TYPE_CHECKING:
    from desktop.bench import Bench


class RecipesPage(QWidget):
    """All recipes in use; Enter opens one, Ctrl+N begins one, Del retires one.

    Signals:
        said: a sentence for the status line.
        changed: a recipe was kept or retired.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        down = column(self, gap=TOGETHER, edge=GROUP)
        top = row(gap=TOGETHER)
        self.lead = Words("body", "quiet", self).wrapped()
        self.new = button(self, main=True)
        self.drop = button(self)
        top.addWidget(self.lead, 1)
        top.addWidget(self.drop)
        top.addWidget(self.new)
        down.addLayout(top)
        self.recipes: Table[Recipe] = Table(RowsModel(self._columns()), self)
        self.none = EmptyState(self)
        self.none.hide()
        down.addWidget(self.recipes, 1)
        down.addWidget(self.none, 1)
        self.recipes.picked.connect(self.edit)
        self.recipes.moved.connect(lambda one: self.drop.setEnabled(one is not None))
        self.new.clicked.connect(self.begin)
        self.drop.clicked.connect(self.retire)
        for keys, slot in (("Ctrl+N", self.begin), ("Del", self.retire)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)
        self.retranslate()

    def retranslate(self) -> None:
        """Every word of the page."""
        self.lead.setText(
            self.tr(
                "A label of anything cured or seasoned takes its ingredients and allergens from "
                "here. A changed recipe is a new one; batches keep the one they were made by."
            )
        )
        self.new.setText(self.tr("&New recipe… (Ctrl+N)"))
        self.drop.setText(self.tr("Re&tire it… (Del)"))
        self.none.set_words(
            self.tr("No recipe yet"),
            self.tr(
                "A recipe says what a cure, a sausage or a seasoning is made of. Labels take the "
                "ingredients and allergens from it; a batch in cure, smoke or the mixer weighs "
                "out by it, and its nitrite is checked where it has any. Ctrl+N begins one: take "
                "the parts from the bags' own labels."
            ),
        )
        self.recipes.set_name(self.tr("Recipes"))

    def refresh(self) -> None:
        """Read the recipes again."""
        with self.bench.store.read() as work:
            found = list(work.recipes.all())
        self.recipes.setVisible(bool(found))
        self.drop.setVisible(bool(found))
        self.none.setVisible(not found)
        self.recipes.show_rows(found, self.recipes.chosen())
        self.drop.setEnabled(self.recipes.chosen() is not None)

    def first_focus(self) -> QWidget:
        """The recipes; where there are none, what begins one."""
        return self.new if self.recipes.isHidden() else self.recipes

    def begin(self) -> None:
        """A new recipe."""
        self._open(RecipeDialog(self.bench, None, self))

    def edit(self, recipe: Recipe) -> None:
        """The chosen one, to be replaced."""
        self._open(RecipeDialog(self.bench, recipe, self))

    def retire(self) -> None:
        """The chosen one is used no more, with a reason."""
        recipe = self.recipes.chosen()
        if recipe is None:
            return
        reason = self.bench.messages.ask_reason(
            self.tr("Retire {name}").format(name=recipe.name),
            self.tr("Its batches keep it. Why is it used no more?"),
        )
        if reason is None:
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.recipes.retire(recipe.id, reason)
            work.commit()
        self._kept()

    def _open(self, dialog: RecipeDialog) -> None:
        self.dialog = dialog
        dialog.accepted.connect(self._kept)
        dialog.open()

    def _kept(self) -> None:
        self.changed.emit()
        self.refresh()
        self.first_focus().setFocus()  # the first one was begun where there was no list

    def _columns(self) -> list[Column[Recipe]]:
        words = self.bench.words
        return [
            Column("name", lambda: self.tr("Recipe"), lambda one: one.name, width=180),
            Column(
                "finish",
                lambda: self.tr("For"),
                lambda one: capital(words.name(one.species or "pork", f"finish.{one.finish}")),
                width=170,
            ),
            Column("species", lambda: self.tr("Of"), self._species, width=150),
            Column("made", lambda: self.tr("Made of"), _made_of, stretch=True, tip=_made_of),
            Column(
                "allergens",
                lambda: self.tr("Allergens"),
                self._allergens,
                kind="state",
                mark=lambda one: Mark.PLAIN if one.allergens_known else Mark.TIGHT,
                width=190,
            ),
            Column("cure", lambda: self.tr("Nitrite checked as"), self._product, width=240),
        ]

    def _species(self, one: Recipe) -> str:
        if not one.species:
            return self.tr("all animals")
        return self.bench.words.name(one.species, f"species.{one.species}")

    def _allergens(self, one: Recipe) -> str:
        known = allergens(one)
        if known is None:
            return self.tr("not looked at yet")
        return ", ".join(known) or self.tr("none")

    def _product(self, one: Recipe) -> str:
        return self.bench.words.say(f"batches.product_{one.product}") if one.product else ""


def _made_of(one: Recipe) -> str:
    return ", ".join(part.name for part in in_order_of_weight(one.ingredients))
