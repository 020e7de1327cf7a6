"""The rule on cattle of 30 months and over: which species it holds for, and which parts.

9 CFR 310.22: of cattle of 30 months and over the skull, brain, eyes, trigeminal ganglia, spinal
cord, dorsal root ganglia and the vertebral column (but not the tail, the transverse processes of
the thoracic and lumbar vertebrae, the wings of the sacrum) go to nobody; of cattle of any age,
tonsils and distal ileum. A species file flags the parts of the column (`srm_from_30_months`) on
its smallest bones: chine, feather and loin bone. Rib bones aren't listed, so a rib roast with the
chine off may go; the inspector has the last word.

What counts as cattle here:
- beef: cattle.
- veal: a calf is cattle. It is under 30 months by what it is, and is asked like any other: an
  animal sold as veal whose age isn't shown is cut as the rule says, never guessed younger.
- bison: slaughtered under voluntary inspection (9 CFR 352), where "cattle" may not mean bison
  (from memory; the text was not read). The cautious reading is kept: its age is asked, its
  backbone is kept back from 30 months on or where the age isn't known, and the inspector says.
"""

CATTLE = frozenset({"beef", "bison", "veal"})


def holds_for(species: str) -> bool:
    """Whether the age of an animal of this species must be asked and its backbone minded.

    Worked example: beef, veal and bison yes; a ewe of four years no (9 CFR 310.22 names cattle).
    """
    return species in CATTLE


def counts_as_over(age: str, at_block: bool = True) -> bool:
    """Whether an animal the rule holds for is cut as one of 30 months and over.

    `age` is "under_30", "30_and_over" or "unknown". Not known counts as over at the block; at
    the counter (`at_block` False) it is planned both ways and only told.
    Worked example: 31 months yes; not known at the block yes, at the counter no.
    """
    return age == "30_and_over" or (age == "unknown" and at_block)


def backbone_kept_back(species: str, age: str, at_block: bool = True) -> bool:
    """Whether the vertebrae of this animal may go to nobody.

    Worked example: beef of 31 months yes; a hog of unknown age no.
    """
    return holds_for(species) and counts_as_over(age, at_block)
