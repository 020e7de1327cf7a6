"""What a filled order form says: its lines, and what wasn't understood, before any of it enters."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QListWidget, QWidget

from desktop.fields import FormDialog
from desktop.panels.heading import Words
from printing.words.choice_words import choice_text
from printing.words.place_words import capital

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from printing.order_form_reading import FilledForm, NotUnderstood

MOST_SAID = 2
LEAST_ASKED, HEIGHT_MISSED = 190, 120  # the two lists at their usual height came to 712 pixels


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
        self.asked, self.unread = Words("small", "quiet", self), Words("small", "quiet", self)
        self.note = Words("body", parent=self).wrapped()
        self.lines = QListWidget(self)
        self.missed = QListWidget(self)
        understood = bool(form.choices or form.usual)
        for heading, table, wanted in (
            (self.asked, self.lines, understood),
            (self.unread, self.missed, bool(form.not_understood)),
        ):
            table.setWordWrap(True)
            for one in (heading, table):
                self.add_below(one)
                one.setVisible(wanted)
        self.lines.setMinimumHeight(LEAST_ASKED)
        self.missed.setFixedHeight(HEIGHT_MISSED)
        self.add_below(self.note)
        self.note.setVisible(bool(form.note))
        self.main.setEnabled(understood or bool(form.note))
        self.retranslate()
        if understood or form.not_understood:
            (self.lines if understood else self.missed).setFocus()

    def retranslate(self) -> None:
        form, words = self.form, self._bench.words
        self.set_words(
            words.say("forms.read_heading"),
            self._lead(),
            self.tr("&Put on the order"),
            self.tr("&Leave it"),
        )
        self.asked.setText(self.tr("What the form asks for"))
        self.unread.setText(self.tr("What was not understood: ask the owner"))
        self.lines.setAccessibleName(self.asked.text())
        self.missed.setAccessibleName(self.unread.text())
        self.note.setText(
            self.tr("The owner's note, which goes to the order's note (F12): {note}").format(
                note=form.note
            )
        )
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

    def not_taken(self) -> str:
        """What of the form isn't on the order and is still to be asked; "" where all is."""
        missed = [one for one in self.form.not_understood if one.what != "usual"]
        if not missed:
            return ""
        said = " ".join(self._missed(one) for one in missed[:MOST_SAID])
        if len(missed) > MOST_SAID:
            more = self.tr("Of the form {count} more weren't understood.")
            said += " " + more.format(count=len(missed) - MOST_SAID)
        return said

    def _lead(self) -> str:
        form = self.form
        understood, missed = len(form.choices) + len(form.usual), len(form.not_understood)
        if not understood and not missed:
            return self.tr("Nothing is ticked or written on it. Was it saved after it was filled?")
        return self.tr("Understood: {lines}. Not understood: {missed}.").format(
            lines=understood, missed=missed
        )

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
