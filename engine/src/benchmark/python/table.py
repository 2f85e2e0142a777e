"""A plain script over a folder of the benchmark: contents of each mix and its limits, and no more.

It knows nothing of water, heat, coat or store, tells no line of a mistake and writes no report. It
is what somebody would write in an afternoon, and so a measure of what a check may cost.
"""
import os
import sys
import yaml

LOADER = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
FACTORS = {"%": 0.01, "g/kg": 1e-3, "mg/kg": 1e-6, "MJ/kg": 1.0, "IU/kg": 1.0, "EUR/kg": 1.0, "g/MJ": 1e-3}


def load(path):
    with open(path, encoding="utf-8") as file:
        return yaml.load(file, LOADER)


def figure(text):
    """65.0 of '65.0 ± 1.6 %', as a part of one; nothing of 'none'."""
    words = str(text).split()
    if words[0] == "none":
        return 0.0
    if words[0] == "below":
        return 0.0
    return float(words[0]) * FACTORS.get(words[-1], 1.0)


def files(folder, ending):
    for at, _, names in os.walk(folder):
        for name in sorted(names):
            if name.endswith(ending):
                yield os.path.join(at, name)


def terms(formula):
    """Pairs of factor and name of '23.6 MJ/kg crude-protein + 39.5 MJ/kg crude-fat - moisture'."""
    found, sign = [], 1.0
    words = formula.split()
    factor = 1.0
    for word in words:
        if word in "+-":
            sign, factor = (1.0 if word == "+" else -1.0), 1.0
        elif word[0].isdigit():
            factor = float(word)
        elif word in FACTORS:
            factor *= 1.0 if word == "MJ/kg" else FACTORS[word]
            if word == "%":
                found.append((sign * factor, None))
        else:
            found.append((sign * factor, word))
    return found


def nutrients(root):
    order, formulas, digested = [], {}, {}
    for path in sorted(files(os.path.join(root, "nutrients"), ".yaml")):
        for name, tells in load(path).items():
            order.append(name)
            if "formula" in tells:
                formulas[name] = terms(tells["formula"])
            if "digestible-of" in tells:
                digested[name] = tells["digestible-of"]
    return order, formulas, digested


def ingredients(root, order, formulas, digested):
    table, groups = {}, {}
    for path in files(os.path.join(root, "ingredients"), ".yaml"):
        data = load(path)
        name = os.path.basename(path)[:-5]
        told = {}
        for block in data.get("contents", []):
            told.update({key: figure(value) for key, value in block.items() if key not in ("source", "species")})
        for nutrient in order:
            if nutrient in told:
                continue
            if nutrient in formulas:
                told[nutrient] = sum(f * (1.0 if of is None else told.get(of, 0.0)) for f, of in formulas[nutrient])
            elif nutrient in digested:
                whole = digested[nutrient]
                part = data.get("digestibility", [{}])[0].get(whole)
                told[nutrient] = told.get(whole, 0.0) * (figure(part) if part else 0.0)
        table[name] = [told.get(nutrient, 0.0) for nutrient in order]
        groups[name] = set(data.get("groups", [])) | {name}
    return table, groups


def prices(root):
    found = {}
    for path in files(os.path.join(root, "prices"), ".yaml"):
        for name, tells in load(path).items():
            if isinstance(tells, dict):
                for key, value in tells.items():
                    price = value.get("price") if isinstance(value, dict) else value
                    if price and str(price)[0].isdigit():
                        found[key] = float(str(price).split()[0])
    return found


def limits(lines):
    """Each side of each limit: subject, whether a maximum, figure."""
    for line in lines:
        words = line.split("#")[0].split()
        for i, word in enumerate(words):
            if word in ("min", "max"):
                first = min(j for j, w in enumerate(words) if w in ("min", "max"))
                unit = words[i + 2] if i + 2 < len(words) else ""
                yield words[:first], word == "max", float(words[i + 1]) * FACTORS.get(unit, 1.0)


def sections(path):
    parts, section = {"": []}, ""
    with open(path, encoding="utf-8") as file:
        for line in file:
            if line[0] not in " \n#":
                section = line.strip()
                parts.setdefault(section, [])
            elif line.strip():
                parts[section].append(line)
    return parts


def main(root):
    order, formulas, digested = nutrients(root)
    place = {name: i for i, name in enumerate(order)}
    table, groups = ingredients(root, order, formulas, digested)
    price = prices(root)
    profile = list(limits(sections(next(files(os.path.join(root, "limits"), ".limits")))["limits"]))
    recipes = judged = broken = 0
    for path in files(os.path.join(root, "recipes"), ".recipe"):
        parts = sections(path)
        shares = {}
        rest = None
        for line in parts["mix"] + parts["coat"]:
            words = line.split()
            if words[1] == "rest":
                rest = words[0]
            else:
                shares[words[0]] = float(words[1]) / 100
        if rest:
            shares[rest] = 1 - sum(shares.values())
        sums = [0.0] * len(order)
        for name, share in shares.items():
            for i, content in enumerate(table[name]):
                sums[i] += share * content
        cost = sum(share * price.get(name, 0.0) for name, share in shares.items())
        recipes += 1
        for subject, most, bound in list(limits(parts["limits"])) + profile:
            if subject[0] == "inclusion":
                value = sum(s for n, s in shares.items() if groups[n] & set(subject[1:]))
            elif subject[0] == "cost":
                value = cost
            elif ":" in subject:
                at = subject.index(":")
                over = sum(sums[place[n]] for n in subject[:at] if n != "+")
                under = sum(sums[place[n]] for n in subject[at + 1 :] if n != "+")
                value = over / under if under else 0.0
            else:
                value = sum(sums[place[n]] for n in subject if n != "+")
            judged += 1
            broken += value > bound if most else value < bound
    print(f"{recipes} recipes, {judged} limits, {broken} broken")


if __name__ == "__main__":
    main(sys.argv[1])
