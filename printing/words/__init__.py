"""The one catalogue of trade words and sentences, for paper, shell and window alike.

Texts lie in `<language>/<domain>.po` beside this file: one domain for each species (its primals,
parts, cuts, ways), `trade` for what species share, `answers` for what the planner says, `papers`
for headings. The key is the msgid (`cut.whole_ham`), the text its msgstr. A shop's own name for
a thing wins over the catalogue.
"""

from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path

LANGUAGES = ("en", "es")
SHARED_DOMAINS = (
    "trade",
    "answers",
    "papers",
    "bills",
    "shell",
    "trace",
    "batches",
    "money",
    "went",
    "forms",
    "rail",
    "block",
    "calendar",
    "labels",
    "boxes",
)
BETWEEN = " | "  # of names listed under one key
_HERE = Path(__file__).parent

_Entry = tuple[str, str]


@lru_cache(maxsize=64)
def _domain(language: str, domain: str) -> Mapping[str, _Entry]:
    """Singular and plural text by key; empty where the catalogue has no such file."""
    path = _HERE / language / f"{domain}.po"
    if not path.exists():
        return {}
    import polib  # read only when words are first needed

    texts: dict[str, _Entry] = {}
    for entry in polib.pofile(str(path)):
        if entry.obsolete or entry.fuzzy:
            continue
        if entry.msgid_plural:
            forms = entry.msgstr_plural
            texts[entry.msgid] = (forms.get(0, ""), forms.get(1, ""))
        else:
            texts[entry.msgid] = (entry.msgstr, entry.msgstr)
    return texts


class Words:
    """Words of one language, with the shop's own names over them.

    `own` maps `"pork/cut.whole_ham"` (or a bare key) to the shop's name for it. A key nobody has
    a text for raises KeyError when `strict`, otherwise the key itself is shown.
    """

    def __init__(
        self, language: str = "en", own: Mapping[str, str] | None = None, *, strict: bool = False
    ) -> None:
        """Words in `language` ("en" or "es")."""
        if language not in LANGUAGES:
            raise ValueError(f"no words in {language!r}; there are {', '.join(LANGUAGES)}")
        self.language = language
        self._own = dict(own or {})
        self._strict = strict

    def name(self, species: str, key: str, count: int = 1) -> str:
        """The words of a key of this species' catalogue, e.g. six of `cut.ham_steak` of pork."""
        own = self._own.get(f"{species}/{key}") or self._own.get(key)
        if own:
            return own
        for domain in (species, "trade"):
            entry = _domain(self.language, domain).get(key)
            if entry is not None:
                return entry[0] if count == 1 else entry[1]
        return self._missing(key)

    def say(self, key: str, count: int = 1, **data: object) -> str:
        """A sentence of the shared domains with its data filled in; `count` picks the plural."""
        own = self._own.get(key)
        if own:
            return own.format(count=count, **data)
        for domain in SHARED_DOMAINS:
            entry = _domain(self.language, domain).get(key)
            if entry is not None:
                text = entry[0] if count == 1 else entry[1]
                return text.format(count=count, **data)
        return self._missing(key)

    def listed(self, species: str, key: str) -> tuple[str, ...]:
        """The names this species' catalogue lists under a key, e.g. `other.hock`; none: ()."""
        entry = _domain(self.language, species).get(key)
        return () if entry is None else tuple(entry[0].split(BETWEEN))

    def has(self, key: str, species: str = "") -> bool:
        """Whether there is a text for the key."""
        domains = (species, "trade", *SHARED_DOMAINS) if species else SHARED_DOMAINS
        return any(key in _domain(self.language, domain) for domain in domains)

    def _missing(self, key: str) -> str:
        if self._strict:
            raise KeyError(f"{self.language}: no words for {key!r}")
        return key
