"""A fault in what Qt calls of ours is said, where it would end the program without a word.

Qt calls our `paintEvent`, `data`, `eventFilter` and their like. On Python before 3.12 a fault that
begins in Python's own C code (`int("x")`, a widget that is gone) comes back from there as a type
and a text, not yet as an exception, and PySide6 (6.8 to 6.11 were tried) reads the text as if it
were one: a segmentation fault. Caught once and raised again it is an exception.

Importing this arms every class made from one of Qt's afterwards, so `desktop.app` imports it
first. Delete it once Python 3.12 is the oldest.
"""

import sys
from collections.abc import Callable
from functools import wraps
from types import FunctionType
from typing import Any

from shiboken6 import Shiboken

NEEDED = sys.version_info < (3, 12)


def is_whole(function: object) -> bool:
    """Whether its faults are exceptions by the time Qt sees them."""
    return getattr(function, "faults_are_whole", False)


def overridden(kind: type) -> dict[str, Callable[..., Any]]:
    """What a class of ours, or what it is mixed from, does in place of Qt's own, by name."""
    found: dict[str, Callable[..., Any]] = {}
    ours = [one for one in kind.__mro__ if not _qts(one)]
    theirs = [one for one in kind.__mro__ if _qts(one)]
    for one in ours:
        for name, function in vars(one).items():
            if type(function) is not FunctionType or name.startswith("__") or name in found:
                continue
            if any(name in vars(base) for base in theirs):
                found[name] = function
    return found


def _qts(kind: type) -> bool:
    return kind.__module__.partition(".")[0] in ("PySide6", "Shiboken", "shiboken6")


def _whole(function: Callable[..., Any]) -> Callable[..., Any]:
    @wraps(function)
    def called(*args: object, **named: object) -> object:
        try:
            return function(*args, **named)
        except BaseException:  # to make an exception of it, no more
            raise

    vars(called)["faults_are_whole"] = True
    return called


def _arm(kind: type[Shiboken.Object], **named: object) -> None:
    super(Shiboken.Object, kind).__init_subclass__(**named)
    for name, function in overridden(kind).items():
        if not is_whole(function):
            setattr(kind, name, _whole(function))


if NEEDED:
    setattr(Shiboken.Object, "__init_subclass__", classmethod(_arm))  # noqa: B010 - not in its types
