"""A paper on the screen that can also be mailed: a link carries no file, so it is attached."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QDesktopServices, QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.panels.buttons import button
from desktop.preview import Preview
from printing.mail import addresses_in, mail

if TYPE_CHECKING:
    from desktop.bench import Bench


@dataclass(frozen=True, slots=True)
class ToMail:
    """Whose mail it is, where it goes as kept at the customer, and what it says."""

    owner: str
    email: str
    subject: str
    text: str


class MailedPaper(Preview):
    """F7 opens the shop's mail program; the paper is written to a file to be attached."""

    def __init__(
        self, bench: "Bench", pdf: bytes, title: str, to: ToMail, parent: QWidget | None = None
    ) -> None:
        self._to = to
        super().__init__(bench, pdf, title, "paper", parent)

    def _build(self) -> None:
        super()._build()
        self.mail_button = button(self)
        self.ways.addWidget(self.mail_button)

    def _connect(self) -> None:
        super()._connect()
        self.mail_button.clicked.connect(self.write_mail)
        QShortcut(QKeySequence("F7"), self).activated.connect(self.write_mail)

    def retranslate(self) -> None:
        super().retranslate()
        self.mail_button.setText(self.tr("Write a &mail (F7)"))

    def write_mail(self) -> None:
        """Write the file, put its place on the clipboard, and open the mail filled in."""
        addresses = addresses_in(self._to.email)
        if not addresses:
            owner = self._to.owner or self.tr("to be named")
            text = self.tr("{owner} has no mail address that can be read: print or save it.")
            self._say(text.format(owner=owner))
            return
        path = self.bench.paths.data / "mail" / f"{self.file_name()}.pdf"
        try:
            path.parent.mkdir(exist_ok=True)
            path.write_bytes(self.pdf)
        except OSError as fault:
            text = self.tr("It was not saved: {path} can't be written ({why}).")
            self._say(text.format(path=path, why=fault.strerror or fault))
            return
        QGuiApplication.clipboard().setText(str(path))
        link = mail(addresses, self._to.subject, (self._to.text,)).link
        if not QDesktopServices.openUrl(QUrl(link, QUrl.ParsingMode.StrictMode)):
            text = self.tr("This computer has no mail program set up. The paper is at {path}.")
            self._say(text.format(path=path))
            return
        self._say(
            self.tr(
                "Attach the paper to the mail: where it lies is on the clipboard, {path}."
            ).format(path=path)
        )


def show_to_mail(
    bench: "Bench", pdf: bytes, title: str, to: ToMail, parent: QWidget | None = None
) -> MailedPaper:
    """Open the paper over the window and return it; it goes when it is closed."""
    shown = MailedPaper(bench, pdf, title, to, parent)
    shown.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    shown.open()
    return shown
