"""Who is working here: pick a name, or give a new one."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog

if TYPE_CHECKING:
    from desktop.bench import Bench


class PersonDialog(FormDialog):
    """Asks who works at this station; a name nobody has yet is a new person."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.bench = bench
        self.name: ChoiceField[str] = ChoiceField(self, required=True, free=True)
        self.grid.add(self.name)
        with bench.store.read() as work:
            names = [person.name for person in work.people.persons() if person.active]
        self.name.set_choices([(name, name) for name in names])
        self.name.set_text(bench.person.name)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Who is working here"),
            self.tr("Every change is kept with this name."),
            self.tr("&Sign on"),
            self.tr("&Leave it"),
        )
        self.name.set_label(self.tr("&Name"))

    def attempt(self) -> str:
        name = (self.name.value() or self.name.text()).strip()
        signed = self.bench.store.sign_on(name, self.bench.station.name)
        self.bench.person = signed.person
        self.bench.settings.change(person=name)
        return ""
