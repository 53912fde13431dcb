"""The two commands of the README: make everything ready, then run the program or its tests.

    python3 desktop/bootstrap.py run [ARGUMENTS]     the window; with arguments the command line
    python3 desktop/bootstrap.py test [ARGUMENTS]    ruff, mypy and pytest; arguments go to pytest

And one for those who give the program away: `bundle` builds a folder that needs no Python.

Standard library only, and no syntax newer than Python 3.6, so that an interpreter that is too old
can still say so in clear words. Everything installed goes into .venv beside pyproject.toml; only
system libraries that Qt cannot start without are asked of apt, and only when one is missing.

Exit status: that of what was started; 1 when it could not be started; 2 for wrong usage.
"""

import hashlib
import os
import shutil
import subprocess
import sys
from typing import Dict, List, Mapping, Optional, Sequence, Tuple

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
OLDEST = (3, 11)
USAGE = "usage: python3 desktop/bootstrap.py run [ARGUMENTS] | test [ARGUMENTS] | bundle"

# What each verb needs of the pinned versions in .ci.
LOCKS = {"run": ("run",), "test": ("run", "test"), "bundle": ("run", "bundle")}

# What dlopen asks for -> the Debian package that brings it.
QT_LIBRARIES = {
    "libglib-2.0.so.0": "libglib2.0-0",
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libfontconfig.so.1": "libfontconfig1",
    "libdbus-1.so.3": "libdbus-1-3",
}
X11_LIBRARIES = {
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
}
WAYLAND_LIBRARIES = {"libwayland-cursor.so.0": "libwayland-cursor0"}

NETWORK_SIGNS = (
    "NewConnectionError",
    "ConnectTimeout",
    "ConnectionError",
    "Failed to establish a new connection",
    "Temporary failure in name resolution",
    "Name or service not known",
    "Network is unreachable",
    "Read timed out",
    "ProxyError",
    "Temporary failure resolving",
    "Could not resolve",
)


class Trouble(Exception):
    """Something stands in the way; the text says what, and what to do about it."""


def main(arguments: Sequence[str]) -> int:
    """Make everything ready and start what was asked for; returns the exit status."""
    if not arguments or arguments[0] not in LOCKS:
        print(USAGE)
        return 0 if list(arguments[:1]) in (["-h"], ["--help"]) else 2
    try:
        if tuple(sys.version_info[:2]) < OLDEST:
            return hand_over(arguments)
        verb, rest = arguments[0], list(arguments[1:])
        display = verb == "run" and has_display(os.environ, sys.platform)
        bring_system_libraries(display)
        python = bring_environment(LOCKS[verb])
        if verb == "bundle":
            return subprocess.call([python, os.path.join(ROOT, ".ci", "bundle.py")])
        compile_when_starts_would_not(python)
        if verb == "test":
            return test(python, rest)
        return run(python, rest) if rest or display else walk(python)
    except Trouble as trouble:
        print(str(trouble), file=sys.stderr)
    except OSError as error:
        print("Rungwise could not be made ready: {}".format(error), file=sys.stderr)
    except KeyboardInterrupt:
        print("\nStopped. The same command goes on from here.", file=sys.stderr)
        return 130
    return 1


# --- what is started ------------------------------------------------------------------------------


def run(python: str, arguments: Sequence[str]) -> int:
    """Start the program; file names in the arguments count from the caller's folder."""
    # -P keeps a folder called "desktop" in the caller's folder from being taken for ours.
    return become([python, "-P", "-m", "desktop", *arguments], child_environment())


def walk(python: str) -> int:
    """Without a display: the main job on the demo scenario, which ends with its folder's path."""
    import tempfile

    folder = os.path.join(tempfile.mkdtemp(prefix="rungwise-"), "walk")
    print("No display here: the same work is done without a window, on the demo scenario.")
    sys.stdout.flush()
    environment = child_environment()
    environment["QT_QPA_PLATFORM"] = "offscreen"
    return subprocess.call(
        [python, "-P", "-m", "desktop", "walk", "--out", folder], env=environment
    )


PURE = "not gui and not files and not slow"
COVERED = (
    "--cov=desktop.training",
    "--cov-report=term-missing:skip-covered",
    "--cov-fail-under=100",
)


def test(python: str, arguments: Sequence[str]) -> int:
    """ruff, mypy, and pytest: the pure tests, which have to reach every branch of the training
    model, then the others; with arguments only those. What fails first ends it with its own exit
    status.
    """
    environment = child_environment()
    environment["QT_QPA_PLATFORM"] = "offscreen"
    checks = [["ruff", "check", "."], ["ruff", "format", "--check", "."], ["mypy"]]
    if not arguments:
        checks.append(["pytest", "-m", PURE, *COVERED])
    for check in checks:
        print("$ " + " ".join(check))
        sys.stdout.flush()
        status = subprocess.call([python, "-m", *check], cwd=ROOT, env=environment)
        if status != 0:
            return status
    rest = ["pytest", *(arguments or ["-m", f"not ({PURE})"])]
    print("$ " + " ".join(rest))
    os.chdir(ROOT)
    return become([python, "-m", *rest], environment)


def become(command: List[str], environment: Dict[str, str]) -> int:
    """Replace this process by the command where the system can, so that signals reach it."""
    sys.stdout.flush()
    if os.name == "posix":
        os.execve(command[0], command, environment)
    return subprocess.call(command, env=environment)


def child_environment() -> Dict[str, str]:
    """The environment of what is started: ours, a readable trace after a crash, no stray paths."""
    environment = dict(os.environ)
    environment["PYTHONPATH"] = ROOT
    environment["PYTHONFAULTHANDLER"] = "1"
    environment.pop("PYTHONHOME", None)
    return environment


def has_display(environ: Mapping[str, str], platform: str) -> bool:
    """Whether a window can be seen by somebody."""
    asked = environ.get("QT_QPA_PLATFORM", "").split(":")[0]
    if asked in ("offscreen", "minimal"):
        return False
    if platform in ("win32", "darwin") or asked:
        return True
    return bool(environ.get("DISPLAY") or environ.get("WAYLAND_DISPLAY"))


def compile_when_starts_would_not(python: str) -> None:
    """Write byte code once where the environment forbids it: a quarter second at each start."""
    if os.environ.get("PYTHONDONTWRITEBYTECODE"):
        packages = ["desktop", "views", "db", "resources"]
        subprocess.call([python, "-m", "compileall", "-qq", *packages], cwd=ROOT)


# --- the interpreter ------------------------------------------------------------------------------


def hand_over(arguments: Sequence[str]) -> int:
    """Go on with a newer interpreter from PATH, or say what is needed."""
    found = newer_python(os.environ.get("PATH", ""))
    if found is None:
        raise Trouble(too_old_text(tuple(sys.version_info[:2])))
    print("This Python is too old for Rungwise; going on with {}.".format(found))
    return become([found, os.path.abspath(__file__), *arguments], dict(os.environ))


def newer_python(path: str) -> Optional[str]:
    """The first interpreter on PATH that is new enough and really starts."""
    for name in ("python3.13", "python3.12", "python3.11", "python3.14", "python3", "python"):
        candidate = shutil.which(name, path=path)
        if candidate and (version_of(candidate) or (0, 0)) >= OLDEST:
            return candidate
    return None


def version_of(python: str) -> Optional[Tuple[int, int]]:
    """Major and minor version of an interpreter; None if it does not start."""
    code = "import sys; print('%d %d' % tuple(sys.version_info[:2]))"
    try:
        answer = subprocess.check_output([python, "-c", code], stderr=subprocess.DEVNULL)
        major, minor = answer.split()
        return int(major), int(minor)
    except (OSError, ValueError, subprocess.CalledProcessError):
        return None


def too_old_text(version: Tuple[int, ...]) -> str:
    """What is said to an interpreter that is too old."""
    return (
        "Rungwise needs Python {}.{} or newer; this is Python {}.{}, and no newer one is on PATH.\n"
        "Install one (Debian 12, Ubuntu 24.04 and later have it as python3; others from "
        "https://www.python.org/downloads/),\nthen start it by its name, for example: "
        "python3.13 desktop/bootstrap.py run"
    ).format(OLDEST[0], OLDEST[1], version[0], version[1])


# --- the virtual environment ----------------------------------------------------------------------


def bring_environment(locks: Sequence[str]) -> str:
    """Make .venv hold exactly the pinned versions of these locks; returns its interpreter.

    A stamp for each lock tells a later call that nothing is to be done; a mark left by an
    installation that was killed tells it to start from nothing.
    """
    venv = os.path.join(ROOT, ".venv")
    python = interpreter_in(venv)
    wanted = [name for name in locks if not stamp_holds(venv, name)]
    if not wanted:
        return python
    unfinished = os.path.join(venv, "rungwise-unfinished")
    if os.path.exists(unfinished) or not is_usable(python):
        make_venv(venv)
    with open(unfinished, "w"):
        pass
    try:
        install(python, wanted)
    except Trouble:  # pip gave up in good order and changed nothing
        os.remove(unfinished)
        raise
    for name in wanted:
        write_stamp(venv, name)
    os.remove(unfinished)
    return python


def interpreter_in(venv: str) -> str:
    """Where the interpreter of a virtual environment lies on this system."""
    if os.name == "nt":
        return os.path.join(venv, "Scripts", "python.exe")
    return os.path.join(venv, "bin", "python")


def is_usable(python: str) -> bool:
    """Whether an environment's interpreter starts, is new enough and has pip."""
    if not os.path.exists(python) or (version_of(python) or (0, 0)) < OLDEST:
        return False
    return subprocess.call([python, "-c", "import pip"], stderr=subprocess.DEVNULL) == 0


def make_venv(venv: str) -> None:
    """Make the environment from nothing, with clear words where venv or pip is missing."""
    import importlib.util

    if any(importlib.util.find_spec(part) is None for part in ("venv", "ensurepip")):
        bring_packages([venv_package()], "Python's venv and pip")
    print("Making the environment .venv with Python {}.{}".format(*sys.version_info[:2]))
    sys.stdout.flush()
    status, output = outcome_of([sys.executable, "-m", "venv", "--clear", venv])
    if status != 0:
        raise Trouble(
            "The environment could not be made:\n{}\nOn Debian and its relatives the package is "
            "called {}.".format(output, venv_package())
        )


def venv_package() -> str:
    """The Debian package that brings venv and pip to this interpreter."""
    if os.path.realpath("/usr/bin/python3") == os.path.realpath(sys.executable):
        return "python3-venv"
    return "python{}.{}-venv".format(*sys.version_info[:2])


def install(python: str, locks: Sequence[str]) -> None:
    """Install the pinned versions; a failure says whether the network or something else did it."""
    print("Installing the pinned packages into .venv (once; some minutes on a slow line)")
    sys.stdout.flush()
    command = [python, "-m", "pip", "install", "--disable-pip-version-check", "--no-input"]
    command += ["--only-binary", ":all:", "--quiet"]
    for name in locks:
        command += ["--requirement", lock_path(name)]
    status, output = outcome_of(command)
    if status != 0:
        raise Trouble(install_failure_text(output))


def install_failure_text(output: str) -> str:
    """Words for a failed installation, from what pip printed."""
    if any(sign in output for sign in NETWORK_SIGNS):
        return (
            "The packages could not be fetched: the network or the package index is out of reach.\n"
            "Connect and start the same command again; what was already fetched is kept.\n"
            "Behind a proxy set HTTPS_PROXY; for an index of your own set PIP_INDEX_URL."
        )
    last = last_lines(output)
    if "No space left on device" in output:
        return "{}\n\nThe disk is full: the environment needs about 1 GB.".format(last)
    return "{}\n\nThe packages could not be installed; pip's last words stand above.".format(last)


def lock_path(name: str) -> str:
    """Where the pinned versions of one lock stand."""
    return os.path.join(ROOT, ".ci", name + ".lock")


def stamp_text(venv: str, name: str) -> str:
    """What a stamp holds: the lock's digest and the interpreter behind the environment."""
    with open(lock_path(name), "rb") as lock:
        digest = hashlib.sha256(lock.read()).hexdigest()
    return "{}\n{}\n".format(digest, os.path.realpath(interpreter_in(venv)))


def stamp_holds(venv: str, name: str) -> bool:
    """Whether the environment already holds this lock, for an interpreter that is still there."""
    if not os.path.exists(interpreter_in(venv)):
        return False
    try:
        with open(stamp_path(venv, name), encoding="utf-8") as stamp:
            return stamp.read() == stamp_text(venv, name)
    except FileNotFoundError:
        return False


def write_stamp(venv: str, name: str) -> None:
    """Note that the environment holds this lock."""
    with open(stamp_path(venv, name), "w", encoding="utf-8") as stamp:
        stamp.write(stamp_text(venv, name))


def stamp_path(venv: str, name: str) -> str:
    """Where the stamp of one lock lies."""
    return os.path.join(venv, "rungwise-{}.stamp".format(name))


# --- system libraries -----------------------------------------------------------------------------


def bring_system_libraries(display: bool) -> None:
    """Bring what Qt needs from the system; nothing is asked of apt when nothing is missing."""
    if not sys.platform.startswith("linux"):
        return
    missing = missing_libraries(needed_libraries(display, os.environ))
    if not missing:
        return
    if not shutil.which("apt-get"):
        raise Trouble(
            "Qt cannot start without these system libraries: {}.\nInstall the packages that hold "
            "them with this system's package manager.".format(", ".join(sorted(missing)))
        )
    bring_packages(sorted(missing.values()), "system libraries that Qt needs")


def needed_libraries(display: bool, environ: Mapping[str, str]) -> Dict[str, str]:
    """The libraries (and their packages) for work without or with a display."""
    needed = dict(QT_LIBRARIES)
    if display and environ.get("DISPLAY"):
        needed.update(X11_LIBRARIES)
    if display and environ.get("WAYLAND_DISPLAY"):
        needed.update(WAYLAND_LIBRARIES)
    return needed


def missing_libraries(needed: Mapping[str, str]) -> Dict[str, str]:
    """Those of the libraries that the dynamic loader does not find."""
    try:
        import ctypes
    except ImportError:  # a Python built without it: Qt will say itself what is missing
        return {}
    missing = {}
    for soname, package in needed.items():
        try:
            ctypes.CDLL(soname)
        except OSError:
            missing[soname] = package
    return missing


def apt_commands(packages: Sequence[str]) -> List[List[str]]:
    """The two commands that install Debian packages and nothing beside them."""
    return [
        ["apt-get", "update"],
        ["apt-get", "install", "--yes", "--no-install-recommends", *packages],
    ]


def bring_packages(packages: Sequence[str], what: str) -> None:
    """Install Debian packages as root; otherwise say the exact command."""
    commands = apt_commands(packages)
    by_hand = " && ".join("sudo " + " ".join(command) for command in commands)
    is_root = hasattr(os, "geteuid") and os.geteuid() == 0
    if not is_root or not shutil.which("apt-get"):
        raise Trouble(
            "Missing: {}.\nOn Debian and its relatives install them with\n\n    {}\n\n"
            "then start the same command again.".format(what, by_hand)
        )
    print("Installing {}: {}".format(what, " ".join(packages)))
    sys.stdout.flush()
    environment = dict(os.environ, DEBIAN_FRONTEND="noninteractive")
    for command in commands:
        status, output = outcome_of(command, environment)
        if status != 0 and command[1] == "install":
            raise Trouble(apt_failure_text(output, by_hand))


def apt_failure_text(output: str, by_hand: str) -> str:
    """Words for packages that apt could not install."""
    if any(sign in output for sign in NETWORK_SIGNS):
        return "The package mirror is out of reach: connect and start the same command again."
    why = "The system libraries could not be installed. By hand:"
    return "{}\n\n{}\n\n    {}".format(last_lines(output), why, by_hand)


def last_lines(output: str) -> str:
    """The end of what a command printed, where the error stands."""
    return "\n".join(output.strip().splitlines()[-12:])


def outcome_of(command: Sequence[str], env: Optional[Mapping[str, str]] = None) -> Tuple[int, str]:
    """Run a command quietly; its exit status and everything that it printed."""
    process = subprocess.Popen(
        list(command), env=env, stdout=subprocess.PIPE, stderr=subprocess.STDOUT
    )
    output, _ = process.communicate()
    return process.returncode, output.decode("utf-8", "replace")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
