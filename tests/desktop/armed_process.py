"""Prints how many classes of the window are made from Qt's, and what of them isn't armed.

They are imported as the program does it. Started by test_overrides, as a program of its own.
"""

import importlib
import pkgutil
import sys

from shiboken6 import Shiboken

import desktop
import desktop.app as app
from desktop.overrides import is_whole, overridden


def ours() -> list[type]:
    """Every class of the window's room that is made from one of Qt's."""
    found: list[type] = []
    known = list(Shiboken.Object.__subclasses__())
    while known:
        kind = known.pop()
        known += kind.__subclasses__()
        if kind.__module__.startswith("desktop."):
            found.append(kind)
    return found


def main() -> None:
    assert app.run
    for module in pkgutil.walk_packages(desktop.__path__, "desktop."):
        if not module.name.endswith("__main__"):
            importlib.import_module(module.name)
    kinds = ours()
    sys.stdout.write(f"{len(kinds)}\n")
    for kind in kinds:
        for name, function in overridden(kind).items():
            if not is_whole(function):
                sys.stdout.write(f"{kind.__module__}.{kind.__name__}.{name}\n")


if __name__ == "__main__":
    main()
