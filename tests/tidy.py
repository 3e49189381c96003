#!/usr/bin/env python3
"""clang-tidy over one source, unless the very same words passed before.

    tests/tidy.py BUILD FILE

What passed is remembered in the user's cache folder by a digest of the preprocessed source, of .clang-tidy and of the
version of clang-tidy, so that only what a change touches is looked at again.
"""
import hashlib
import json
import os
import pathlib
import shlex
import subprocess
import sys


def preprocessed(build: pathlib.Path, source: pathlib.Path) -> bytes:
    commands = json.loads((build / "compile_commands.json").read_text(encoding="utf-8"))
    entry = next(entry for entry in commands if pathlib.Path(entry["file"]) == source)
    words = shlex.split(entry["command"])
    at = words.index("-o")
    del words[at : at + 2]
    words[words.index("-c")] = "-E"
    done = subprocess.run([*words, "-C", "-P"], cwd=entry["directory"], capture_output=True, check=True)
    return done.stdout.replace(os.fsencode(pathlib.Path.cwd()), b".")


def passes(build: pathlib.Path, source: str) -> bool:
    done = subprocess.run(["clang-tidy", "-p", build, "--quiet", source], stderr=subprocess.PIPE, check=False)
    said = [line for line in done.stderr.splitlines(True) if b" warnings generated" not in line]
    sys.stderr.buffer.write(b"".join(said))
    return done.returncode == 0


def main(build: pathlib.Path, source: str) -> int:
    try:
        words = preprocessed(build, pathlib.Path.cwd() / source)
    except (StopIteration, ValueError, subprocess.CalledProcessError):
        return 0 if passes(build, source) else 1  # in no target, or made in another way
    digest = hashlib.sha256(words)
    digest.update(pathlib.Path(".clang-tidy").read_bytes())
    digest.update(subprocess.run(["clang-tidy", "--version"], capture_output=True, check=True).stdout)
    cache = pathlib.Path(os.environ.get("XDG_CACHE_HOME") or pathlib.Path.home() / ".cache") / "feltmark-tidy"
    mark = cache / digest.hexdigest()
    if mark.exists():
        return 0
    if not passes(build, source):
        return 1
    cache.mkdir(parents=True, exist_ok=True)
    mark.touch()
    return 0


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    sys.exit(main(pathlib.Path(sys.argv[1]), sys.argv[2]))
