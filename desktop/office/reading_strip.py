"""The strip of a page that reads lists and puts them on paper: asked anew, it begins again."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.office.progress import ProgressStrip, R, Steps
from desktop.preview import Preview, show_paper

if TYPE_CHECKING:
    from desktop.bench import Bench


class ReadingStrip(ProgressStrip):
    """One run at a time; `preview` is the paper shown last."""

    def __init__(self, bench: "Bench", parent: QWidget) -> None:
        super().__init__(bench, parent)
        self._page = parent
        self._anew: Callable[[], object] | None = None
        self.preview: Preview | None = None

    def stops_for(self, anew: Callable[[], object]) -> bool:
        """Whether something runs: it is stopped then, and `anew` follows when it has ended."""
        if self.running:
            self._anew = anew
            self.stop()
        return self.running

    def run(self, call: Callable[[Steps], R], then: Callable[[R], object]) -> None:
        """As a strip does; what was asked for anew meanwhile comes in the place of `then`."""
        super().run(call, lambda found: None if self._begins_anew() else then(found))

    def paper(self, make: Callable[[Steps], bytes | None], title: str) -> None:
        """Make a paper and show it; one that was stopped is None and isn't shown."""
        super().run(make, lambda pdf: self._made(pdf, title))

    def _made(self, pdf: bytes | None, title: str) -> None:
        self._begins_anew()
        if pdf is not None:
            self.preview = show_paper(self.bench, pdf, title, "paper", self._page)

    def _begins_anew(self) -> bool:
        anew, self._anew = self._anew, None
        if anew is not None:
            anew()
        return anew is not None
