# SPDX-License-Identifier: MIT
"""bash or zsh in a pseudo-terminal, to press Tab in."""

import os
import pty
import re
import select

SET_UP = {
    "bash": ["bind 'set bell-style none'", "bind 'set show-all-if-ambiguous on'",
             "bind 'set completion-query-items 0'", "bind 'set page-completions off'",
             "bind 'set enable-bracketed-paste off'", "source '{script}'"],
    "zsh": ["unsetopt beep prompt_sp", "LISTMAX=100000", "bindkey -e", "autoload -Uz compinit",
            "fpath=('{folder}/functions' $fpath)", "compinit -u -D"],
}
START = {"bash": ["bash", "--norc", "--noprofile", "-i"], "zsh": ["zsh", "-f", "-i"]}
TAB, BEGIN, END, KILL = "\t", "\x01", "\x05", "\x15"
LONGEST_WAIT = 60  # seconds, for a machine under load; no test passes by it


class Terminal:
    def __init__(self, shell, script, folder, environment):
        functions = folder / "functions"
        functions.mkdir()
        (functions / "_pelt").symlink_to(script)
        self.turn = 0
        child, self.terminal = pty.fork()
        if child == 0:
            os.chdir(folder)
            os.execvpe(shell, START[shell],
                       {**environment, "COLUMNS": "200", "LINES": "200", "PS1": "> ", "PS2": ""})
        for line in SET_UP[shell]:
            self.send(line.format(script=script, folder=folder) + "\n")
        # A terminal this wide breaks no word.
        self.send("stty cols 200 rows 200\n")
        self.told()

    def send(self, text):
        os.write(self.terminal, text.encode())

    def told(self):
        """All that came out since the last time: up to a word that is not written so."""
        self.turn += 1
        self.send(f"echo 'the'end{self.turn}\n")
        wanted = f"theend{self.turn}\r\n"
        text = ""
        while wanted not in text:
            ready, _, _ = select.select([self.terminal], [], [], LONGEST_WAIT)
            assert ready, f"the shell waits; it has printed:\n{text}"
            text += os.read(self.terminal, 65536).decode(errors="replace")
        # Without what moves the cursor, and the pauses for slow terminals.
        return re.sub(r"\x1b(\[[0-9;?]*[a-zA-Z]|[=>])|\x00", "", text)

    def last_word(self, line, then=""):
        """The last word after Tab and what is typed then, as a program would get it."""
        self.send(line + TAB + then + BEGIN + "printf '<<%s>>\\n' " + END + "\n")
        words = re.findall(r"^<<(.*)>>\r$", self.told(), re.M)
        return words[-1] if words else "nothing that is a line"

    def shown(self, line):
        """What is listed after Tab, with the line itself."""
        self.send(line + TAB + KILL)
        return self.told()

    def words_offered(self, line, wanted):
        """Those of the wanted words that are listed; blanks in them may be escaped."""
        shown = self.shown(line).replace("\\", "").replace("\r", "\n")
        listed = {cell.strip() for cell in re.split(r"\s{2,}|\n", shown)}
        return listed & set(wanted)

    def options(self, line):
        return set(re.findall(r"(?:^|\s)(--[a-z-]*[a-z])", self.shown(line)))
