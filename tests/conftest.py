"""What every test stands on: no screen, no chance, one language, nobody's own files."""

import os
import time
from collections.abc import Iterator

import pytest
from hypothesis import HealthCheck, settings

pytest_plugins = ["tests.store_fixture"]

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["LC_ALL"] = "C.UTF-8"
os.environ.pop("LANGUAGE", None)
os.environ["TZ"] = "UTC"
if hasattr(time, "tzset"):
    time.tzset()

settings.register_profile(
    "ci",
    derandomize=True,
    deadline=None,
    database=None,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.register_profile("dev", deadline=None, max_examples=300)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "ci"))


@pytest.fixture(scope="session", autouse=True)
def nobodys_files(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Point every per-user folder at a temporary one, so that a test can't touch a real shop."""
    home = tmp_path_factory.mktemp("home")
    with pytest.MonkeyPatch.context() as patch:
        for name in ("XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"):
            patch.setenv(name, str(home / name.lower()))
        patch.setenv("HOME", str(home))
        patch.setenv("APPDATA", str(home / "appdata"))
        patch.setenv("LOCALAPPDATA", str(home / "localappdata"))
        yield
