"""What a filled order form says: its lines, and what wasn't understood, before any of it enters."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QListWidget, QWidget

from desktop.fields import FormDialog
from printing.words.choice_words import choice_text
from printing.words.place_words import capital

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from printing.order_form_reading import FilledForm, NotUnderstood


class FilledFormDialog(FormDialog):
    """Lists the form's lines; taken, they are planned with the order like typed ones."""

    def __init__(
        self,
        bench: "Bench",
        desk: "OrderDesk",
        form: "FilledForm",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=2)
        self.setMinimumWidth(720)
        self._bench, self._desk, self.form = bench, desk, form
        self.lines = QListWidget(self)
        self.missed = QListWidget(self)
        for table in (self.lines, self.missed):
            table.setWordWrap(True)
            self.add_below(table)
        self.lines.setMinimumHeight(220)
        self.missed.setVisible(bool(form.not_understood))
        self.main.setEnabled(bool(form.choices or form.usual))
        self.retranslate()
        (self.lines if form.choices or form.usual else self.missed).setFocus()

    def retranslate(self) -> None:
        form, words = self.form, self._bench.words
        self.set_words(
            words.say("forms.read_heading"),
            self.tr("{lines} lines were understood, {missed} were not.").format(
                lines=len(form.choices) + len(form.usual), missed=len(form.not_understood)
            )
            + (f"\n{form.note}" if form.note else ""),
            self.tr("&Put on the order"),
            self.tr("Leave"),
        )
        self.lines.setAccessibleName(self.tr("What the form asks for"))
        self.missed.setAccessibleName(self.tr("What was not understood"))
        species = self._desk.catalogue.species
        self.lines.clear()
        self.lines.addItems(
            [capital(choice_text(one, self._desk.catalogue, words)) for one in form.choices]
            + [
                words.say("forms.read_usual", primal=capital(words.name(species, f"primal.{one}")))
                for one in form.usual
            ]
        )
        self.missed.clear()
        self.missed.addItems([self._missed(one) for one in form.not_understood])

    def _missed(self, one: "NotUnderstood") -> str:
        words, species = self._bench.words, self._desk.catalogue.species
        if one.what == "usual":
            primal = capital(words.name(species, f"primal.{one.found}"))
            return words.say("forms.missed_usual", primal=primal)
        return words.say(
            "forms.missed",
            cut=capital(words.name(species, f"cut.{one.cut}", 2)),
            what=words.say(f"forms.{one.what}").lower(),
            found=one.found,
        )
