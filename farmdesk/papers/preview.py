"""Pages of a paper as pictures, for the window's preview. No Qt: plain bytes."""

from __future__ import annotations

import numpy as np
import pypdfium2

LEAST_PX, MOST_PX = 16, 8000  # a preview is neither a dot nor a poster


def page_count(pdf: bytes) -> int:
    """How many pages a paper has."""
    document = pypdfium2.PdfDocument(pdf)
    try:
        return len(document)
    finally:
        document.close()


def page_image(pdf: bytes, page_index: int, width_px: int) -> tuple[bytes, int, int]:
    """One page (counted from 0) as a picture `width_px` [px] wide: RGBA bytes row by row, width, height.

    Raises IndexError for a page that is not there.
    """
    document = pypdfium2.PdfDocument(pdf)
    try:
        if not 0 <= page_index < len(document):
            raise IndexError(page_index)
        page = document[page_index]
        wide = min(max(width_px, LEAST_PX), MOST_PX)
        bitmap = page.render(
            scale=wide / page.get_width(), rev_byteorder=True, prefer_bgrx=True, fill_color=(255, 255, 255, 255)
        )
        rows = bitmap.to_numpy()
        picture = np.full((rows.shape[0], rows.shape[1], 4), 255, dtype=np.uint8)
        picture[:, :, :3] = rows[:, :, :3]
        return picture.tobytes(), int(rows.shape[1]), int(rows.shape[0])
    finally:
        document.close()
