"""Papers made at the same moment, as two workers do, are what each is by itself."""

import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor

import pytest

from tests.printing.test_account import many, paper_of

PAPERS = 300


@pytest.fixture
def hurried() -> Iterator[None]:
    """Threads take turns far more often than they usually do."""
    before = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(before)


@pytest.mark.usefixtures("hurried")
def test_papers_that_end_at_once_have_their_own_letters() -> None:
    """Without a turn for each, some of 300 failed in four of four runs, now and then one was wrong.

    ReportLab's state of a face is shared by all papers; a paper of its own is the same bytes.
    """
    accounts = [many(count) for count in (1, 3, 8, 20)]
    alone = [paper_of(account) for account in accounts]
    with ThreadPoolExecutor(4) as pool:
        made = [pool.submit(paper_of, accounts[at % 4]) for at in range(PAPERS)]
        wrong = [at for at, one in enumerate(made) if one.result() != alone[at % 4]]
    assert wrong == []
