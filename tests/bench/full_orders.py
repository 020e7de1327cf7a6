"""Full orders as they come over the counter: a whole beef, four owners, about 50 lines in all.

Drawn from what a sheet usually offers for each part of the animal; common practice, no source.
"""

import random
from typing import Any, Literal

Json = dict[str, Any]
Form = Literal["quarters", "split halves", "quarters of every side"]
FORMS: tuple[Form, ...] = ("quarters", "split halves", "quarters of every side")
THICK = ("3/4 in", "1 in", "1 1/4 in", "1 1/2 in")


def _one(cut: str, amount: Json | str, **more: str | int) -> Json:
    return {"cut": cut, "amount": amount, **more}


def _fore(draw: random.Random, few: int) -> list[Json]:
    """What one owner has of the front: chuck, arm, shank, brisket, plate and rib."""
    thick = draw.choice(THICK)
    roast = f"{draw.choice([3, 4])} lb"
    slots = [
        [
            _one("chuck_roll", "all"),
            _one("blade_roast", {"pieces": max(1, 4 // few)}, piece_weight=roast),
            _one("chuck_eye_steak", {"slices": max(2, 4 // few)}, thickness=thick),
        ],
        [
            _one("arm_roast", {"pieces": max(1, 2 // few)}, piece_weight=roast),
            _one("clod_roast", {"pieces": 1}, piece_weight=roast),
        ],
        [_one("cross_rib_roast", {"pieces": 1}, piece_weight="3 lb"), _one("neck_bones", "rest")],
        [
            _one("short_ribs", "rest"),
            _one("flanken_short_ribs", "rest"),
            _one("grind_plate", "all"),
        ],
        [
            _one("rib_steak", {"slices": draw.randint(4, 8) // few}, thickness=thick),
            _one("ribeye_steak", {"slices": draw.randint(4, 8) // few}, thickness=thick),
            _one("rib_roast", {"pieces": 1}, ribs=2),
        ],
        [_one("ribeye_steak", "rest", thickness=thick), _one("rib_steak", "rest", thickness=thick)],
        [_one("shank_slices", {"slices": 2}, thickness="1 in"), _one("shank_slices", "rest")],
        [
            _one("brisket_flat", "rest"),
            _one("brisket_point", "rest"),
            _one("grind_brisket", "rest"),
        ],
    ]
    return [draw.choice(slot) for slot in slots]


def _hind(draw: random.Random, few: int) -> list[Json]:
    """What one owner has of the back: short loin, sirloin, round, flank."""
    thick = draw.choice(THICK)
    slots = [
        [
            _one("t_bone_steak", {"slices": draw.randint(4, 8) // few}, thickness=thick),
            _one("strip_steak", {"slices": draw.randint(4, 8) // few}, thickness=thick),
        ],
        [_one("filet", {"slices": 2}, thickness="1 1/2 in"), _one("butt_tenderloin", "rest")],
        [_one("strip_steak", "rest", thickness=thick), _one("t_bone_steak", "rest")],
        [
            _one("sirloin_steak", {"slices": draw.randint(2, 6) // few}, thickness=thick),
            _one("top_sirloin_steak", {"slices": 4 // few}, thickness=thick),
        ],
        [_one("sirloin_steak", "rest", thickness=thick), _one("top_sirloin_steak", "rest")],
        [
            _one("round_steak", {"slices": draw.randint(2, 6) // few}, thickness="3/4 in"),
            _one("top_round_roast", {"pieces": 1}, piece_weight="3 lb"),
            _one("london_broil", {"slices": 2}, thickness="1 in"),
        ],
        [_one("rump_roast", "rest", piece_weight="3 lb"), _one("eye_of_round_roast", "rest")],
        [_one("sirloin_tip_roast", "rest", piece_weight="3 lb"), _one("sirloin_tip_steak", "rest")],
    ]
    return [draw.choice(slot) for slot in slots]


def _trim(draw: random.Random) -> list[Json]:
    """What is ground, for stew and for the pot."""
    lines = [_one("grind_open", "rest"), _one("ground_beef", "rest", lean="80 %")]
    lines += [_one("stew", {"pounds": "2 lb"}), _one("soup_bones", {"pounds": "2 lb"})]
    return lines[: draw.choice([3, 4])]


def _holdings(form: Form, owner: int) -> list[Json]:
    if form == "quarters":
        quarter = ("fore", "hind")[owner % 2]
        return [{"carcass": 1, "side": 1 + owner // 2, "quarter": quarter}]
    if form == "split halves":
        return [{"carcass": 1, "side": 1 + owner // 2, "fraction": "1/2"}]
    return [{"carcass": 1, "side": side, "fraction": "1/4"} for side in (1, 2)]


def _lines(draw: random.Random, form: Form, owner: int) -> list[Json]:
    """About 12 lines an owner: a quarter's every part twice over, or fore and hind once."""
    if form == "quarters":
        part = (_fore, _hind)[owner % 2]
        again = [one for one in part(draw, 2) if isinstance(one["amount"], dict)]
        return [*part(draw, 2), *draw.sample(again, min(2, len(again))), *_trim(draw)]
    both = [*_fore(draw, 2), *_hind(draw, 2)]
    keep = sorted(draw.sample(range(len(both)), 9))
    return [*[both[place] for place in keep], *_trim(draw)]


def full_order(seed: str, form: Form) -> Json:
    """One lot: the same for the same seed and form."""
    draw = random.Random(f"{form} {seed}")
    weights = [{"whole": f"{draw.randint(300, 420)}.0 lb"} for _ in range(2)]
    choices: list[Json] = []
    for owner in range(4):
        for one in _lines(draw, form, owner):
            choices.append({"line": len(choices) + 1, "share": owner + 1, **one})
    return {
        "steelyard_order": 1,
        "species": "beef",
        "catalogue_version": 1,
        "settings": {"cut_alike": False},
        "carcasses": [{"tag": "1", "chilled": weights, "age": "under_30"}],
        "shares": [
            {"number": n + 1, "owner": f"Owner {n + 1}", "holdings": _holdings(form, n)}
            for n in range(4)
        ],
        "choices": choices,
    }
