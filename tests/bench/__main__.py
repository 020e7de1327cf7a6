"""Runs one bench by name: `python -m tests.bench plan`, with its own words after it."""

import sys
from importlib import import_module
from pathlib import Path

HERE = Path(__file__).parent


def names() -> list[str]:
    """The benches there are: modules of this folder that say what `main` does."""
    return sorted(path.stem for path in HERE.glob("*.py") if "def main(" in path.read_text("utf-8"))


def main(words: list[str]) -> int:
    """Run the bench named first; without a name, or with one unknown, say which there are."""
    there = [name for name in names() if not name.startswith("_")]
    if not words or words[0] not in there:
        sys.stderr.write(f"usage: python -m tests.bench {{{','.join(there)}}}\n")
        return 2
    return import_module(f"tests.bench.{words[0]}").main(words[1:])


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
