"""The door for messages as tests have it: silent, keeping what was said."""

from pathlib import Path


class RecordedMessages:
    """Keeps what was told and asked; answers with `answers`, first to last.

    An answer is True or False for `ask`, a reason or None for `ask_reason`, a path or None for
    the files. Asking without an answer left fails the test: nobody expected the question.
    """

    def __init__(self) -> None:
        self.told: list[str] = []
        self.asked: list[str] = []
        self.answers: list[object] = []

    def tell(self, title: str, text: str, detail: str = "") -> None:
        self.told.append(text)

    def ask(self, title: str, text: str, yes: str, no: str) -> bool:
        answer = self._answer(text)
        assert isinstance(answer, bool), f"{text!r} takes True or False"
        return answer

    def ask_reason(self, title: str, text: str, *, optional: bool = False) -> str | None:
        answer = self._answer(text)
        assert answer is None or isinstance(answer, str), f"{text!r} takes a reason or None"
        assert answer != "" or optional, f"{text!r} isn't kept without a reason"
        return answer

    def save_where(self, title: str, suggested: Path, kind: str) -> Path | None:
        return self._path(title)

    def open_which(self, title: str, folder: Path, kind: str) -> Path | None:
        return self._path(title)

    def _path(self, title: str) -> Path | None:
        answer = self._answer(title)
        assert answer is None or isinstance(answer, Path), f"{title!r} takes a path or None"
        return answer

    def _answer(self, text: str) -> object:
        self.asked.append(text)
        assert self.answers, f"nobody expected to be asked: {text}"
        return self.answers.pop(0)
