"""The palette: contrast by the formula of WCAG 2.2 (W3C Recommendation, 5 October 2023)."""

import pytest

from desktop.look.palette import DARK, LIGHT, Roles

GROUNDS = ("page", "card", "tint", "hover")
TEXTS = ("ink", "steel", "stamp", "settled", "tight", "contested")


def luminance(color: str) -> float:
    """Relative luminance as WCAG 2.2 defines it, with its threshold of 0.04045."""
    parts = [int(color[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """(L1 + 0.05) / (L2 + 0.05), the lighter above the darker."""
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def test_the_formula_gives_the_published_ends_and_the_well_known_grey() -> None:
    # WCAG 2.2: black on white is 21 : 1. #767676 on white is the usual example of 4.54 : 1.
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.005)


@pytest.mark.parametrize("roles", [LIGHT, DARK], ids=lambda roles: roles.name)
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("text", TEXTS)
def test_text_reaches_the_contrast_of_success_criterion_1_4_3(
    roles: Roles, ground: str, text: str
) -> None:
    assert contrast(getattr(roles, text), getattr(roles, ground)) >= 4.5


@pytest.mark.parametrize("roles", [LIGHT, DARK], ids=lambda roles: roles.name)
@pytest.mark.parametrize("ground", GROUNDS)
def test_borders_and_focus_reach_the_contrast_of_success_criterion_1_4_11(
    roles: Roles, ground: str
) -> None:
    for role in ("edge", "stamp", "contested"):
        assert contrast(getattr(roles, role), getattr(roles, ground)) >= 3.0


@pytest.mark.parametrize("roles", [LIGHT, DARK], ids=lambda roles: roles.name)
def test_the_main_action_is_readable(roles: Roles) -> None:
    assert contrast(roles.on_stamp, roles.stamp) >= 4.5


def test_the_figures_of_the_look_hold() -> None:
    # The look's own table: ink on page 15.2 and stamp on card 9.1 in light, 14.6 and 7.2 in dark.
    assert round(contrast(LIGHT.ink, LIGHT.page), 1) == 15.2
    assert round(contrast(LIGHT.stamp, LIGHT.card), 1) == 9.1
    assert round(contrast(DARK.ink, DARK.page), 1) == 14.6
    assert round(contrast(DARK.stamp, DARK.card), 1) == 7.2
