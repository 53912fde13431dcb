"""Build the self-contained folder dist/rungwise and try it as a computer without Python would.

Started by `python3 desktop/bootstrap.py bundle`, inside an environment that holds run.lock and
bundle.lock.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
BUILT = ROOT / "dist" / "rungwise"


def main() -> int:
    """Build, try, say where it is; the exit status."""
    command = [sys.executable, "-m", "PyInstaller", "--noconfirm", "--log-level", "WARN"]
    command += ["--distpath", str(ROOT / "dist"), "--workpath", str(ROOT / "build")]
    status = subprocess.call([*command, str(ROOT / ".ci" / "rungwise.spec")], cwd=ROOT)
    if status == 0:
        status = try_it()
    if status == 0:
        size = sum(path.lstat().st_size for path in BUILT.rglob("*") if not path.is_symlink())
        print(f"{BUILT} ({size / 1e6:.0f} MB): copy the folder, start rungwise in it")
    return status


def try_it() -> int:
    """The whole round and a draft with an empty environment; then the window, for a second."""
    with tempfile.TemporaryDirectory(prefix="rungwise-") as home:
        environment = {"HOME": home, "PATH": "", "QT_QPA_PLATFORM": "offscreen", "LANG": "C.UTF-8"}
        if sys.platform == "win32":
            environment |= {"SYSTEMROOT": os.environ["SYSTEMROOT"], "USERPROFILE": home}
        wishes = "--days 3 --minutes 60 --equipment barbell --level novice --goal strength"
        for arguments in (["walk", "--out", "walk"], ["draft", *wishes.split(), "--out", "d.json"]):
            tried = subprocess.run(
                [BUILT / "rungwise-cli", *arguments],
                cwd=home,
                env=environment,
                stdout=subprocess.DEVNULL,
                check=False,
            )
            if tried.returncode != 0:
                print(f"the built folder cannot {arguments[0]}", file=sys.stderr)
                return 1
        with subprocess.Popen([BUILT / "rungwise"], cwd=home, env=environment) as window:
            try:
                print(f"the window ended at once: {window.wait(timeout=3)}", file=sys.stderr)
                return 1
            except subprocess.TimeoutExpired:
                window.terminate()
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
