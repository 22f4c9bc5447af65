// SPDX-License-Identifier: MIT
#include "report/draw/picture.hpp"

#include <algorithm>

namespace pelt::report::draw {
namespace {

struct Mover {
    double x;
    double y;

    Point moved(Point p) const { return {p.x + x, p.y + y}; }
    Box moved(Box b) const { return {b.x + x, b.y + y, b.width, b.height}; }

    Mark operator()(Path path) const {
        for (Ring& ring : path.rings)
            for (Point& p : ring)
                p = moved(p);
        return path;
    }
    Mark operator()(Rectangle r) const {
        r.box = moved(r.box);
        return r;
    }
    Mark operator()(Circle c) const {
        c.middle = moved(c.middle);
        return c;
    }
    Mark operator()(Arrow a) const {
        a.middle = moved(a.middle);
        return a;
    }
    Mark operator()(Text t) const {
        t.at = moved(t.at);
        return t;
    }
    Mark operator()(ClipBegin c) const {
        c.box = moved(c.box);
        return c;
    }
    Mark operator()(const GroupBegin& g) const { return g; }
    Mark operator()(GroupEnd g) const { return g; }
    Mark operator()(ClipEnd c) const { return c; }
};

} // namespace

void put(Picture& whole, const Picture& part, double x, double y) {
    for (const Mark& mark : part.marks)
        whole.marks.push_back(std::visit(Mover{x, y}, mark));
}

namespace {

/// Digits, capitals and the signs between them stay above the line.
bool descends(const std::string& words) {
    return std::any_of(words.begin(), words.end(), [](char c) {
        return !(c >= '0' && c <= '9') && !(c >= 'A' && c <= 'Z') && c != ' ' && c != '.';
    });
}

} // namespace

Box box_of(const Text& text, const Letters& letters) {
    const double length = letters.width(text.words, text.size, text.face);
    const double before = text.anchor == Anchor::start ? 0
                          : text.anchor == Anchor::end ? length
                                                       : length / 2;
    const double up = capital_height / 2 * text.size;
    const double down = (capital_height / 2 + (descends(text.words) ? descent : 0)) * text.size;
    if (text.turned)
        return {text.at.x - up, text.at.y - (length - before), up + down, length};
    return {text.at.x - before, text.at.y - up, length, up + down};
}

double degrees_of(pelt::Heading heading) {
    switch (heading) {
    case pelt::Heading::right:
        return 0;
    case pelt::Heading::up:
        return 90;
    case pelt::Heading::left:
        return 180;
    case pelt::Heading::down:
        break;
    }
    return 270;
}

} // namespace pelt::report::draw
