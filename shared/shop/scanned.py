"""What a code scanned at the hand-over stands for: packages of the order, or why none."""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field

from shared.marking.package_code import PackageCode, read_package
from shared.marking.serial import BoxSerial, read_box
from shared.shop.hand_overs import Boxed
from shared.shop.packages import PackageMade


@dataclass(frozen=True, slots=True)
class Scanned:
    """Packages still here that a code stands for; `box` is "" where it is a package's code."""

    packages: frozenset[int]
    box: str = ""


@dataclass(frozen=True, slots=True)
class ScanRefused:
    """Why a code gives nothing.

    "not_ours": no code of a box or package; "check_character": misread; "other_order" (`order`);
    "no_box", "box_fetched" (`box`); "no_package", "package_void", "package_fetched" (`package`);
    "other_weight" (`package`, `label`, `kept`): the label's net weight isn't the package's.
    """

    code: str
    data: Mapping[str, str] = field(default_factory=dict[str, str])


def scanned(
    text: str,
    order_number: int,
    packages: Iterable[PackageMade],
    here: Collection[int],
    places: Mapping[int, Boxed],
) -> Scanned | ScanRefused:
    """The packages of order `order_number` that a scanned or typed code stands for.

    `packages` are all of the order, `here` the ids of those not fetched, `places` where they lie.
    Box 3 of order 1042 is "1042-B3-T", package 7 of it "1042-7-7", or the element string of its
    GS1 label. Of a box from which two of twelve packages were fetched ten are found.
    """
    box = read_box(text)
    if isinstance(box, BoxSerial):
        return _box(box, order_number, here, places)
    package = read_package(text)
    if isinstance(package, tuple):
        every = tuple(packages)
        tried = [_package(one, order_number, every, here) for one in package]
        mine = [one for one in tried if isinstance(one, Scanned) or one.code != "other_order"]
        return (mine or tried)[0]
    misread = any(one.code not in ("not_ours", "unknown_ai", "empty") for one in (box, package))
    return ScanRefused("check_character" if misread else "not_ours", {"text": text.strip()})


def _box(
    found: BoxSerial, order_number: int, here: Collection[int], places: Mapping[int, Boxed]
) -> Scanned | ScanRefused:
    if found.order != order_number:
        return ScanRefused("other_order", {"order": str(found.order)})
    inside = {one for one, at in places.items() if at.box.strip().upper() == found.box}
    if not inside:
        return ScanRefused("no_box", {"box": found.box})
    left = frozenset(inside & set(here))
    return Scanned(left, found.box) if left else ScanRefused("box_fetched", {"box": found.box})


def _package(
    found: PackageCode,
    order_number: int,
    packages: Iterable[PackageMade],
    here: Collection[int],
) -> Scanned | ScanRefused:
    if found.order != order_number:
        return ScanRefused("other_order", {"order": str(found.order)})
    told = {"package": str(found.package)}
    made = next((one for one in packages if one.label_number == found.package), None)
    if made is None:
        return ScanRefused("no_package", told)
    if found.net is not None and found.net.nanograms != made.net.nanograms:
        weights = {"label": found.net.text(), "kept": made.net.text()}
        return ScanRefused("other_weight", {**told, **weights})
    if made.void:
        return ScanRefused("package_void", told)
    return (
        Scanned(frozenset({made.id})) if made.id in here else ScanRefused("package_fetched", told)
    )
