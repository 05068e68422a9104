"""A file of lines in bounded pieces, and a piece's cells as matrices of bytes.

No text object is made per row: a million rows cost a few hundred calls of NumPy, and no single call
holds the other threads for long. Cells may be quoted, ragged or garbage; nothing here raises on bytes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cached_property
from itertools import pairwise
from typing import BinaryIO, NamedTuple

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

Bytes = NDArray[np.uint8]
Ints = NDArray[np.int64]

BLOCK = 1 << 18  # bytes read at once: about 10,000 rows of a usual logger
LINES = 20_000  # most rows handled in one call (the house's rule for work beside the screen)
LONGEST = 1 << 20  # bytes: a "line" past this is no line, and is handed on cut
WIDEST = 48  # bytes: the longest cell that can be a date or a number
_BLANK = np.zeros(256, bool)
_BLANK[[9, 13, 32, 34]] = True  # tab, return, space, quote: trimmed from both ends of a cell
# spaces and minus signs that programs write in place of the plain ones
_PLAIN = (("\u00a0", b" "), ("\u202f", b" "), ("\u2009", b" "), ("\u2212", b"-"))


class Script(NamedTuple):
    """How the bytes of a file spell its lines: the encoding, its mark's length [bytes], and the line end."""

    encoding: str
    mark_n: int
    newline: bytes


def script_of(head: bytes) -> Script:
    """Tell the encoding and line end from the first bytes of a file."""
    marks = {b"\xef\xbb\xbf": "utf-8", b"\xff\xfe": "utf-16-le", b"\xfe\xff": "utf-16-be"}
    mark = next((mark for mark in marks if head.startswith(mark)), b"")
    if mark:
        encoding = marks[mark]
    else:
        nulls = head[:512].count(0)
        wide = len(head) >= 8 and nulls * 3 > len(head[:512])  # every other byte of plain words in UTF-16
        encoding = ("utf-16-le" if head[1:2] == b"\0" else "utf-16-be") if wide else "utf-8"
    newline = "\n".encode(encoding)
    if newline not in head and "\r".encode(encoding) in head:
        newline = "\r".encode(encoding)
    return Script(encoding, len(mark), newline)


class Text(NamedTuple):
    """Lines as UTF-8 with plain line ends, and the place [bytes] in the file up to which whole lines are read."""

    lines: bytes
    end: int


def texts(file: BinaryIO, script: Script, offset: int, unfinished: bool = True) -> Iterator[Text]:
    """The file's lines from a place [bytes] on, in pieces of at most `LINES` lines.

    `unfinished` says whether a last line without a line end is a line, or still being written.
    """
    file.seek(offset)
    raw, end = b"", offset
    while block := file.read(BLOCK):
        raw += block
        cut = _last_line_end(raw, script.newline)
        if not cut and len(raw) > LONGEST:
            cut = len(raw) & ~1
        if cut:
            end += cut
            yield from _split(_plain(raw[:cut], script), end)
            raw = raw[cut:]
    if raw and unfinished:
        yield Text(_plain(raw, script), end)


def _last_line_end(raw: bytes, newline: bytes) -> int:
    at = raw.rfind(newline)
    while at % len(newline) and at >= 0:  # half of one letter and half of the next are no line end
        at = raw.rfind(newline, 0, at + len(newline) - 1)
    return at + len(newline) if at >= 0 else 0


def _plain(raw: bytes, script: Script) -> bytes:
    if script.encoding != "utf-8":
        raw = raw.decode(script.encoding, "replace").encode()
    if script.newline.strip(b"\0") == b"\r":
        raw = raw.replace(b"\r", b"\n")
    if not raw.isascii():
        for odd, plain in _PLAIN:
            raw = raw.replace(odd.encode(), plain)
    return raw


def _split(lines: bytes, end: int) -> Iterator[Text]:
    if lines.count(b"\n") <= LINES:
        yield Text(lines, end)
        return
    ends = np.flatnonzero(np.frombuffer(lines, np.uint8) == 10) + 1
    cuts = [0, *ends[LINES - 1 : -1 : LINES].tolist(), len(lines)]
    for low, high in pairwise(cuts):
        yield Text(lines[low:high], end)


class Piece:
    """Lines parted into cells by a delimiter; delimiters between quotes do not part."""

    def __init__(self, lines: bytes, delimiter: str) -> None:
        if delimiter == " ":
            lines = re.sub(rb" +", b" ", lines)
        if not lines.endswith(b"\n"):
            lines += b"\n"
        self.delimiter = delimiter
        self._padded: Bytes = np.frombuffer(lines + bytes(WIDEST), np.uint8)
        self.bytes: Bytes = self._padded[: len(lines)]
        self.ends: Ints = np.flatnonzero(self.bytes == 10)
        self.starts: Ints = np.concatenate(([0], self.ends[:-1] + 1))
        parts = self.bytes == ord(delimiter)
        if b'"' in lines:
            quotes = np.cumsum(self.bytes == 34)
            before = quotes[self.starts] - (self.bytes[self.starts] == 34)
            parts &= (quotes - np.repeat(before, self.ends - self.starts + 1)) % 2 == 0
        self._parts: Ints = np.append(np.flatnonzero(parts), len(lines))
        self._first: Ints = np.searchsorted(self._parts, self.starts)
        self.cells_n: Ints = np.searchsorted(self._parts, self.ends) - self._first + 1

    def __len__(self) -> int:
        return len(self.ends)

    @cached_property
    def most_cells_n(self) -> int:
        """The number of cells that most lines with more than one cell have."""
        counts = np.bincount(np.minimum(self.cells_n, 256))
        counts[:2] = 0
        return int(counts.argmax()) if counts.any() else 1

    def cells(self, column: int) -> Bytes:
        """The column's cells [n × width], trimmed and padded with 0; a cell too wide ends in 255."""
        last = len(self._parts) - 1
        start = self.starts if column == 0 else self._parts[np.minimum(self._first + column - 1, last)] + 1
        end = np.minimum(self._parts[np.minimum(self._first + column, last)], self.ends)
        end = np.where(column < self.cells_n, end, 0)
        start = np.minimum(start, end)
        start, end = self._trimmed(start, end)
        wide = end - start
        width = max(1, min(int(wide.max(initial=0)), WIDEST))
        found: Bytes = sliding_window_view(self._padded, width)[start]
        if wide.min(initial=width) < width:
            found[np.arange(width) >= wide[:, None]] = 0
        found[wide > WIDEST, -1] = 255
        return found

    def _trimmed(self, start: Ints, end: Ints) -> tuple[Ints, Ints]:
        for _ in range(WIDEST):
            ahead = (start < end) & _BLANK[self.bytes[np.minimum(start, len(self.bytes) - 1)]]
            behind = (start + ahead < end) & _BLANK[self.bytes[end - 1]]
            if not ahead.any() and not behind.any():
                break
            start, end = start + ahead, end - behind
        return start, end

    def row(self, line: int) -> list[str]:
        """One line's cells as words, for a preview or a header."""
        bounds = [int(self.starts[line]) - 1]
        first = int(self._first[line])
        bounds += [int(at) for at in self._parts[first : first + int(self.cells_n[line]) - 1]]
        bounds.append(int(self.ends[line]))
        return [words(self.bytes[low + 1 : high]) for low, high in pairwise(bounds)]


def words(raw: Bytes) -> str:
    """Bytes as a person may read them: UTF-8, or else Western European, without signs that cannot be shown."""
    plain = raw.tobytes().strip(b"\0\xff")
    try:
        text = plain.decode()
    except UnicodeDecodeError:
        text = plain.decode("cp1252", "replace")
    return "".join(sign for sign in text if sign.isprintable()).strip(' "')


def joined_cells(parts: list[Bytes]) -> Bytes:
    """Cells of several columns side by side, a space between."""
    if len(parts) == 1:
        return parts[0]
    space = np.full((len(parts[0]), 1), 32, np.uint8)
    return np.hstack([column for part in parts for column in (part, space)][:-1])


# One multiplier per place, so that one number stands for a cell's shape (odd, 64 bits, drawn once).
_MIX = np.random.default_rng(20_250_114).integers(1 << 62, size=WIDEST * 2 + 1, dtype=np.uint64) * np.uint64(
    2
) + np.uint64(1)
SHAPES = 512  # of one piece; twelve month names, a.m. and p.m. and short and long days make about 200


def by_shape(cells: Bytes) -> Iterator[tuple[str, Ints]]:
    """The cells' shapes, a shape being a cell in small letters with every digit written 0; and the rows of each.

    `13/1/2025 5:02 PM` has the shape `00/0/0000 0:00 pm`. What has a shape of its own among too many is garbage.
    """
    if not len(cells):
        return
    shapes = np.where((cells >= 48) & (cells <= 57), np.uint8(48), cells)
    if (shapes == shapes[0]).all():
        yield _shape(shapes[0]), np.arange(len(cells))
        return
    keys = (shapes * _MIX[: shapes.shape[1]]).sum(axis=1, dtype=np.uint64)
    _, inverse, counts = np.unique(keys, return_inverse=True, return_counts=True)
    rows = np.split(np.argsort(inverse, kind="stable"), np.cumsum(counts)[:-1])
    for index in np.argsort(-counts, kind="stable")[:SHAPES].tolist():
        yield _shape(shapes[rows[index][0]]), rows[index]


def _shape(raw: Bytes) -> str:
    return raw.tobytes().rstrip(b"\0").lower().decode("latin-1")


def whole_number(cells: Bytes, low: int, high: int) -> Ints:
    """The whole number that stands in places `low` to `high` of each row, all of them digits."""
    powers = 10 ** np.arange(high - low - 1, -1, -1, dtype=np.int64)
    return np.asarray((cells[:, low:high].astype(np.int64) - 48) @ powers, dtype=np.int64)
