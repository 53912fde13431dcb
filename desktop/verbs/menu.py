"""This user's menu: the entry, the icon, and what a program file is."""

from __future__ import annotations

import sys

from desktop import menu_entry, paths
from desktop.verbs.terminal import Options, Terminal, Wrong, print_lines


def install_menu(terminal: Terminal, options: Options) -> None:
    """The menu entry, the icon, and what a program file is."""
    if not sys.platform.startswith("linux"):
        raise Wrong("menu entries of this kind are for Linux desktops")
    folder = paths.shared_folder()
    if options.remove:
        print_lines(f"removed {path}" for path in menu_entry.remove(folder))
        return
    print_lines(map(str, menu_entry.install(folder, menu_entry.starting_command())))
    print("Rungwise is in the menu; program files (*.rungwise.json) open with it")
