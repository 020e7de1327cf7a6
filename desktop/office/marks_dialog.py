"""The plant's own marks: establishment number, approved legend, product numbers, how it is kept."""

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QBuffer, QIODevice, Qt
from PySide6.QtGui import QImage, QImageReader, QPainter, QPixmap
from PySide6.QtWidgets import QLabel, QWidget

from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.look.space import GROUP, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from printing.words.other_names import cut_names
from shared.carcass.anatomy import catalogue
from shared.carcass.anatomy import species as all_species
from shared.marking.plant_marks import (
    Artwork,
    PlantMarks,
    artwork_problem,
    establishment_problem,
    product_number,
)
from shared.marking.problems import MarkingProblem
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.marking.label import Keep
    from shared.marking.plant_marks import LegendFrom

SEEN = 96  # points each way, the artwork in the dialog
DRAWN = 960  # dots of the longer edge of what has none of its own
KEPT = Qt.AspectRatioMode.KeepAspectRatio


def artwork_of(path: Path) -> Artwork | None:
    """A file as artwork, black and white as a label printer has it; None if it is no picture.

    An SVG and the first page of a PDF have no dots of their own: they are drawn at DRAWN.
    """
    image = _page(path) if path.suffix.casefold() == ".pdf" else _picture(path)
    if image.isNull():
        return None
    white = QImage(image.size(), QImage.Format.Format_RGB32)
    white.fill(Qt.GlobalColor.white)
    painter = QPainter(white)
    painter.drawImage(0, 0, image)
    painter.end()
    mono = white.convertToFormat(QImage.Format.Format_Mono, Qt.ImageConversionFlag.ThresholdDither)
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not mono.save(buffer, "PNG"):  # pyright: ignore[reportCallIssue, reportArgumentType]
        return None
    return Artwork(path.name, bytes(buffer.data().data()), mono.width(), mono.height())


def _picture(path: Path) -> QImage:
    reader = QImageReader(str(path))
    if bytes(reader.format().data()) in (b"svg", b"svgz"):
        reader.setScaledSize(reader.size().scaled(DRAWN, DRAWN, KEPT))
    return reader.read()


def _page(path: Path) -> QImage:
    from desktop.printers import page_image, page_sizes  # reads PDF pages: only when one is chosen

    try:
        pdf = path.read_bytes()
        size = page_sizes(pdf)[0]
        return page_image(pdf, 0, DRAWN * 72 / max(size.width, size.height))
    except (OSError, ValueError):
        return QImage()


class MarksDialog(FormDialog):
    """Keeps the plant's marks. Numbers typed for several products are kept together."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self.bench = bench
        with bench.store.read() as work:
            self.marks: PlantMarks = work.marks.now()
            self._dpi = work.shop.details().dpi
        self.artwork = self.marks.artwork
        self.numbers = dict(self.marks.gtins)
        self._make()
        self.retranslate()
        self._fill()

    def _make(self) -> None:
        self.establishment = TextField(self, most=20)
        self.legend: ChoiceField[LegendFrom] = ChoiceField(self, required=True)
        self.keep: ChoiceField[Keep] = ChoiceField(self, required=True)
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.product: ChoiceField[str] = ChoiceField(self, required=True)
        self.gtin = TextField(self, most=20)
        for field in (self.establishment, self.legend, self.keep):
            self.grid.add(field)
        for field in (self.species, self.product, self.gtin):
            self.grid.add(field)
        self.picture = QLabel(self)
        self.picture.setFixedSize(SEEN, SEEN)
        self.picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.choose = button(self)
        self.remove = button(self)
        self.said = Words("body", "quiet", self).wrapped()
        below = QWidget(self)
        across = row(below, gap=GROUP)
        across.addWidget(self.picture)
        across.addWidget(self.choose, 0, Qt.AlignmentFlag.AlignVCenter)
        across.addWidget(self.remove, 0, Qt.AlignmentFlag.AlignVCenter)
        across.addWidget(self.said, 1, Qt.AlignmentFlag.AlignVCenter)
        self.add_below(below)
        self.choose.clicked.connect(self.choose_artwork)
        self.remove.clicked.connect(self.take_artwork_away)
        self.species.changed.connect(self._offer_products)
        self.product.changed.connect(self._show_number)
        self.gtin.committed.connect(self._take_number)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Marks of inspected goods"),
            self.tr(
                "Only your own legend, as it was approved for your establishment. The inspector "
                "and the rules of labeling have the last word; custom-exempt labels never bear it."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.establishment.set_label(self.tr("&Establishment number"))
        self.legend.set_label(self.tr("Inspection le&gend"))
        self.legend.set_choices(
            [
                ("", self.tr("none: no labels of inspected goods")),
                ("stock", self.tr("printed on the label stock already")),
                ("artwork", self.tr("our approved artwork, placed")),
            ]
        )
        self.keep.set_label(self.tr("Packages lea&ve"))
        self.keep.set_choices(
            [("keep_frozen", self.tr("frozen")), ("keep_refrigerated", self.tr("refrigerated"))]
        )
        self.species.set_label(self.tr("&Animal"))
        words = self.bench.words
        self.species.set_choices(
            [(one, words.name(one, f"species.{one}")) for one in all_species()]
        )
        self.product.set_label(self.tr("&Product"))
        self.gtin.set_label(self.tr("G&TIN of its weighed packages"))
        self.gtin.hint(self.tr("14 digits, first a 9"))
        self.choose.setText(self.tr("Choose the art&work…"))
        self.remove.setText(self.tr("Take it awa&y"))
        self.picture.setAccessibleName(self.tr("The legend's artwork"))
        self._offer_products()
        self._show_artwork()

    def choose_artwork(self) -> None:
        """Take an image file as the plant's artwork; say what is wrong with it."""
        path = self.bench.messages.open_which(
            self.tr("The approved legend"),
            Path.home(),
            self.tr("Pictures (*.png *.svg *.pdf *.jpg *.jpeg *.bmp)"),
        )
        if path is None:
            return
        found = artwork_of(path)
        problem = artwork_problem(found, self._dpi) if found is not None else None
        if found is None:
            self.refuse(self.tr("{name} is no picture that can be read.").format(name=path.name))
        elif problem is not None:
            self.refuse(self._artwork_words(problem))
        else:
            self.refuse("")
            self.artwork = found
            self.legend.set_value("artwork")
        self._show_artwork()

    def take_artwork_away(self) -> None:
        """No artwork from now on; what is printed keeps what it has."""
        self.artwork = None
        if self.legend.value() == "artwork":
            self.legend.set_value("")
        self._show_artwork()

    def attempt(self) -> str:
        self._take_number()
        number = self.establishment.value() or ""
        if establishment_problem(number) is not None:
            self.establishment.complain(
                self.tr("Letters, digits and - only, at most 12; the label says Est. itself.")
            )
            return ""
        if self.gtin.problem() or self.grid.problems():
            return ""
        legend = self.legend.value() or ""
        if legend == "artwork" and self.artwork is None:
            return self.tr("Choose the artwork, or say that the stock bears the legend.")
        if legend and not number:
            self.establishment.complain(self.tr("The legend goes with the number: fill it in."))
            return ""
        marks = replace(
            self.marks,
            establishment=number,
            legend=legend,
            artwork=self.artwork,
            keep=self.keep.value() or "keep_frozen",
        )
        return self._kept(marks)

    def _kept(self, marks: PlantMarks) -> str:
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.marks.save(marks)
            if isinstance(found, StaleEdit):
                return self.tr(
                    "{who} has changed this meanwhile. Leave it and open it again."
                ).format(who=found.by)
            for (species, cut), gtin in self.numbers.items():
                if self.marks.gtins.get((species, cut), "") != gtin:
                    work.marks.number(species, cut, gtin)
            work.commit()
        return ""

    def _fill(self) -> None:
        self.establishment.set_value(self.marks.establishment)
        self.legend.set_value(self.marks.legend)
        self.keep.set_value(self.marks.keep)
        self.species.set_value(next(iter(self.numbers), ("beef", ""))[0])
        self._offer_products()
        self.product.set_value(self._products()[0][0])
        self._show_number()
        self._show_artwork()

    def _products(self) -> list[tuple[str, str]]:
        """Cuts of the animal by name; those with a number first, the number behind the name."""
        species = self.species.value() or "beef"
        words, found = self.bench.words, list[tuple[bool, str, str]]()
        for code, cut in catalogue(species).cuts.items():
            if cut.kind != "to_trim":
                gtin = self.numbers.get((species, code), "")
                name = words.name(species, f"cut.{code}")
                found.append((not gtin, f"{name} · {gtin}" if gtin else name, code))
        found.sort(key=lambda one: (one[0], one[1].casefold()))
        return [(code, name) for _, name, code in found]

    def _offer_products(self) -> None:
        self._show_products()
        self._show_number()

    def _show_products(self) -> None:
        species, words = self.species.value() or "beef", self.bench.words
        products = self._products()
        codes = [code for code, _ in products]
        self.product.set_choices(products, others=lambda: cut_names(words, species, codes))

    def _show_number(self) -> None:
        key = (self.species.value() or "", self.product.value() or "")
        self.gtin.set_value(self.numbers.get(key, ""))

    def _take_number(self) -> None:
        """The number typed belongs to the product shown."""
        species, cut = self.species.value(), self.product.value()
        typed = self.gtin.text().strip()
        if species is None or cut is None or typed == self.numbers.get((species, cut), ""):
            return
        found = product_number(typed) if typed else ""
        if isinstance(found, MarkingProblem):
            self.gtin.complain(self._number_words(found))
            return
        self.numbers[species, cut] = found
        self._show_products()

    def _number_words(self, problem: MarkingProblem) -> str:
        match problem.code:
            case "check_digit":
                return self.tr("The last digit should be {expected}: look at it again.").format(
                    expected=problem.data["expected"]
                )
            case "not_variable":
                return self.tr("A weighed package's GTIN has 14 digits and begins with 9.")
            case _:
                return self.tr("A GTIN is 14 digits.")

    def _artwork_words(self, problem: MarkingProblem) -> str:
        if problem.code == "artwork_too_coarse":
            return self.tr(
                "The image has {wide} × {high} dots; this printer needs {needed} the longer way."
            ).format(**problem.data)
        return self.tr("The file is too large: 2 MB fit.")

    def _show_artwork(self) -> None:
        image = QPixmap()
        if self.artwork is not None:
            image.loadFromData(self.artwork.png)
            image = image.scaled(
                SEEN,
                SEEN,
                KEPT,
                Qt.TransformationMode.SmoothTransformation,
            )
        self.picture.setPixmap(image)
        self.picture.setVisible(self.artwork is not None)
        self.remove.setVisible(self.artwork is not None)
        self.said.setText(self.artwork.name if self.artwork else self.tr("No artwork yet."))
