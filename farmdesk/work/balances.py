"""The weight river, the mill's balance and what stays unexplained, in stories."""

from __future__ import annotations

from farmdesk.picture.entries import GREEN, HUSK, UNEXPLAINED, WATER
from farmdesk.picture.fold import LotPicture
from farmdesk.picture.matter import Stage, ledger
from farmdesk.picture.measures import graded_g, green_g, method_of, sent_g
from farmdesk.picture.picture import Picture
from farmdesk.text import N_, Text, kg, pct
from farmdesk.work.portions import ACCOUNT_WORDS, TARGET_WB_FRAC, form_words, portions
from farmdesk.work.stories import BalancePart, RiverPart, Unexplained


def _stage_words(picture: Picture, lot: LotPicture, name: str) -> Text:
    wet, dry = form_words(picture, lot)
    return {
        "delivered": N_("stages", "delivered"),
        "accepted": N_("stages", "accepted"),
        "spread": wet,
        "dry": dry,
        "sent": N_("stages", "sent to the mill"),
        "green": N_("stages", "green"),
    }[name]


def river(picture: Picture, lot: LotPicture) -> tuple[RiverPart, ...]:
    """The lot's weight from delivery to green, with its dry matter inside."""
    parts = []
    for stage in ledger(lot, picture.things, picture.corrections):
        left = tuple((ACCOUNT_WORDS[s.name], s.grams) for s in stage.left if s.grams and s.name in ACCOUNT_WORDS)
        up = any(s.name == WATER for s in stage.left)
        words = _stage_words(picture, lot, stage.name)
        lost = stage.missing.dry_g if stage.flagged and stage.missing is not None else 0.0
        parts.append(RiverPart(words, stage.grams, stage.dry.dry_g, stage.dry.dry_sd_g, left, up, missing_g=lost))
    lying = portions(picture, lot)
    if parts and lying and all(p.now_g is not None and p.moisture is not None for p in lying):
        now_g = sum(p.now_g or 0 for p in lying)
        dry_g = sum((p.now_g or 0) * (1 - p.moisture.wb_frac) for p in lying if p.moisture)
        sd_g = parts[-1].dry_matter_sd_g
        gone = ((ACCOUNT_WORDS[WATER], parts[-1].grams - now_g),)
        parts.append(RiverPart(N_("stages", "now"), now_g, dry_g, sd_g, gone, True, "computed"))
        method = method_of(lot, picture.things)
        end = (method.store_low_wb_frac + method.store_high_wb_frac) / 2 if method else TARGET_WB_FRAC
        parts.append(RiverPart(N_("stages", "expected"), round(dry_g / (1 - end)), dry_g, sd_g, (), True, "estimated"))
    return tuple(parts)


def unexplained(picture: Picture, lot: LotPicture) -> tuple[Unexplained, ...]:
    """What no paper explains at drying and at the mill, each with the spread it must be judged by."""
    found = []
    for stage in ledger(lot, picture.things, picture.corrections):
        if stage.missing is None:
            continue
        found.append(_unexplained(picture, lot, stage))
    return tuple(found)


def _unexplained(picture: Picture, lot: LotPicture, stage: Stage) -> Unexplained:
    assert stage.missing is not None
    if stage.name == "green":
        grams = lot.balance.get(UNEXPLAINED, 0)
        tolerance_g = 2 * stage.missing.dry_sd_g * stage.grams / max(stage.dry.dry_g, 1.0)
        sent = sent_g(lot) or 1
        facts = {"missing": kg(grams, 1), "share": pct(grams / sent), "allowed": kg(tolerance_g, 1)}
        if stage.flagged:
            text = N_(
                "balance",
                "At the mill {missing} ({share}) are unexplained: beyond the {allowed} that scales may differ.",
                **facts,
            )
        else:
            text = N_(
                "balance",
                "At the mill {missing} ({share}) are unexplained; up to {allowed} scales may differ.",
                **facts,
            )
        return Unexplained(N_("balance", "mill"), float(grams), tolerance_g / 2, stage.flagged, text)
    grams_f, sd = stage.missing.dry_g, stage.missing.dry_sd_g
    facts = {"missing": kg(grams_f, 1), "spread": kg(sd, 1), "share": pct(grams_f / max(stage.dry.dry_g, 1.0))}
    if stage.flagged:
        text = N_(
            "balance",
            "On the beds {missing} of dry matter ({share}) are missing and unexplained, give or take {spread}.",
            **facts,
        )
    else:
        text = N_(
            "balance",
            "On the beds {missing} of dry matter unexplained, give or take {spread}: nothing to look for.",
            **facts,
        )
    return Unexplained(N_("balance", "beds"), grams_f, sd, stage.flagged, text)


def mill_balance(picture: Picture, lot: LotPicture) -> tuple[tuple[BalancePart, ...], Text | None]:
    """The pieces of what was sent, in the mill's order, and the line above them; empty before the slip."""
    sent, green = sent_g(lot), green_g(lot)
    if green is None:
        return (), None
    parts = [BalancePart(a, ACCOUNT_WORDS[a], graded_g(lot, a) or 0) for a in (GREEN[0], GREEN[3], GREEN[1], GREEN[2])]
    if not sent:
        return tuple(p for p in parts if p.grams), N_("balance", "{green} of green, joined", green=kg(green))
    husk = graded_g(lot, HUSK)
    parts += [BalancePart(HUSK, ACCOUNT_WORDS[HUSK], husk or 0)]
    parts += [BalancePart(UNEXPLAINED, ACCOUNT_WORDS[UNEXPLAINED], lot.balance.get(UNEXPLAINED, 0))]
    _, dry = form_words(picture, lot)
    line = N_(
        "balance",
        "{sent} of {form} sent; outturn {green}, {share}",
        sent=kg(sent),
        form=dry,
        green=kg(green),
        share=pct(green / sent),
    )
    return tuple(p for p in parts if p.grams or p.name == UNEXPLAINED), line
