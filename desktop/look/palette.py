"""The colours of the shop by role, for a light and a dark room; no widget names a colour."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Roles:
    """One theme: a colour ("#RRGGBB") for each role.

    Text roles (ink, steel, stamp, settled, tight, contested) reach 4.5 : 1 on page, card and
    tint; `edge`, the border of what can be typed in, reaches 3 : 1 (WCAG 2.2, 1.4.3 and 1.4.11).
    `line` only divides and carries no meaning. `tint` lies under what is chosen, `hover` under
    the pointer. `on_stamp` is text on a stamp-coloured ground.
    """

    name: str
    page: str
    card: str
    ink: str
    steel: str
    line: str
    edge: str
    stamp: str
    on_stamp: str
    tint: str
    hover: str
    settled: str
    tight: str
    contested: str


LIGHT = Roles(
    name="light",
    page="#FBFAF7",
    card="#FFFFFF",
    ink="#1D2327",
    steel="#55626B",
    line="#D8D3C8",
    edge="#857F73",
    stamp="#4A3C8C",
    on_stamp="#FFFFFF",
    tint="#EFECF8",
    hover="#F3F1EB",
    settled="#2A6A3F",
    tight="#8A5A00",
    contested="#A8261C",
)

DARK = Roles(
    name="dark",
    page="#15191C",
    card="#1E2428",
    ink="#ECE9E2",
    steel="#A7B2BA",
    line="#38424A",
    edge="#74818B",
    stamp="#B3A6F2",
    on_stamp="#15191C",
    tint="#2B2940",
    hover="#262D32",
    settled="#7FCB97",
    tight="#E5B454",
    contested="#FF9A8D",
)

THEMES = {roles.name: roles for roles in (LIGHT, DARK)}
