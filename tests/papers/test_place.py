"""Places on a sheet: labels that never cover one another, scales that keep inside."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from farmdesk.papers.page import _hatched
from farmdesk.papers.place import Box, Scale, Taken, apart, in_rows

LABELS = st.lists(st.tuples(st.floats(0, 500), st.floats(5, 60)), max_size=7).map(sorted)


@given(LABELS)
def test_labels_move_apart_and_keep_their_order(labels: list[tuple[float, float]]) -> None:
    wanted, widths = [at for at, _ in labels], [wide for _, wide in labels]
    edges = apart(wanted, widths, 4, 0, 500)
    for i in range(1, len(edges)):
        assert edges[i] >= edges[i - 1] + widths[i - 1] + 4 - 1e-6
    assert all(edge >= 0 for edge in edges)
    if sum(widths) + 4 * len(widths) <= 500:
        assert all(edge + wide <= 500 + 1e-6 for edge, wide in zip(edges, widths, strict=True))


def test_labels_with_room_stay_where_they_belong() -> None:
    assert apart([10, 200, 400], [50, 50, 50], 4, 0, 500) == [10, 200, 400]


@given(LABELS)
def test_rows_hold_every_label_once(labels: list[tuple[float, float]]) -> None:
    rows = in_rows([at for at, _ in labels], [wide for _, wide in labels], 4, 0, 500, 60)
    assert sorted(which for row in rows for which, _ in row) == list(range(len(labels)))
    for row in rows:
        for (_, a), (_, b) in pairwise(row):
            assert b > a
        assert all(edge >= -0.1 and edge + labels[which][1] <= 500.1 for which, edge in row)


def test_near_neighbours_need_a_second_row_only_when_far_from_home() -> None:
    assert len(in_rows([0, 2, 300], [70, 70, 70], 4, 0, 400, 84)) == 1
    assert len(in_rows([0, 2, 4], [70, 70, 70], 4, 0, 400, 30)) > 1


@given(st.floats(-10, 10), st.floats(-10, 10))
def test_a_point_never_leaves_its_chart(x: float, y: float) -> None:
    box = Box(10, 20, 110, 80)
    a, b = Scale(box, -1, 1, -1, 1).at(x, y)
    assert box.left <= a <= box.right
    assert box.top <= b <= box.bottom


def test_a_scale_without_a_stretch_does_not_divide_by_nought() -> None:
    assert Scale(Box(0, 0, 10, 10), 3, 3, 5, 5).at(3, 5) == (0, 10)


def test_a_place_is_given_once() -> None:
    taken, spot = Taken(), Box(0, 0, 10, 10)
    assert taken.place([spot], Box(0, 0, 20, 20)) == spot
    assert taken.place([spot], Box(0, 0, 20, 20)) is None
    assert taken.place([Box(15, 0, 25, 10)], Box(0, 0, 20, 20)) is None


@given(st.sampled_from([0, 45, 90, 135]), st.floats(0.5, 300), st.floats(0.5, 300), st.floats(1.5, 6))
def test_a_hatch_stays_in_its_box(slope: int, wide: float, high: float, pitch: float) -> None:
    box = Box(5, 7, 5 + wide, 7 + high)
    for a, b in _hatched(box, slope, pitch):
        for x, y in (a, b):
            assert box.left - 1e-6 <= x <= box.right + 1e-6
            assert box.top - 1e-6 <= y <= box.bottom + 1e-6
        if slope in (45, 135):
            assert abs(abs(a[0] - b[0]) - abs(a[1] - b[1])) < 1e-6
