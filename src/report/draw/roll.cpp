// SPDX-License-Identifier: MIT
#include "report/draw/roll.hpp"

#include "report/draw/cut_number.hpp"
#include "report/draw/laps.hpp"
#include "report/draw/leaders.hpp"
#include "report/draw/roll_margins.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <set>

namespace pelt::report::draw {
namespace {

class RollPainter {
public:
    RollPainter(const Sheet& sheet, const std::vector<PlacedPiece>& all, std::size_t used_roll,
                const Measures& measures, const RollView& view, const Letters& letters)
        : job_(sheet.plan.job()), all_(all), used_(sheet.plan.layout().rolls.at(used_roll)),
          roll_(job_.rolls.at(used_.roll)), measures_(measures), view_(view), letters_(letters),
          left_(room_left * view.type), frame_(box_of({view.from, 0}, {view.to, roll_.width})),
          leaders_(left_, std::max(frame_.right(), view.width), view.type, letters) {}

    Picture painted(const std::vector<const PlacedPiece*>& pieces) {
        const bool clips = std::any_of(pieces.begin(), pieces.end(), [&](const PlacedPiece* p) {
            const pelt::Box box = p->cut_box();
            return box.low.x < view_.from || box.high.x > view_.to;
        });
        if (clips)
            out_.marks.push_back(ClipBegin{frame_});
        film();
        for (const PlacedPiece* p : pieces)
            piece(*p);
        if (clips)
            out_.marks.push_back(ClipEnd{});
        for (const LeftOver& film : view_.left_over)
            left_over(film);
        cuts();
        const Leaders::Set leaders = leaders_.set();
        add(leaders.picture);
        add(numbers_);
        const DistanceRows rows = distances();
        add(rows.picture);
        add(ends_of_roll(view_.from == 0 ? "free end" : "toward the free end",
                         job_.film.direction != Direction::any, left_, frame_.height, view_.type,
                         letters_));
        const double above = 0.2 * view_.type + std::max(overhang(), leaders.height);
        Picture whole;
        whole.width = std::max({frame_.right(), rows.right, leaders.right}) + 0.3 * view_.type;
        whole.height = above + frame_.height + rows.height;
        put(whole, out_, 0, above);
        return whole;
    }

private:
    /// How far the number of a cut along the roll's edge stands out.
    double overhang() const { return view_.cut_sizes.empty() ? 0 : 0.9 * view_.cut_sizes.front(); }

    // Roll frame to the drawing's: y turns over; the roll's upper left corner is (left_, 0).
    Point point(GridPoint p) const {
        return {left_ + in_mm(p.x - view_.from) * view_.scale,
                in_mm(roll_.width - p.y) * view_.scale};
    }
    Ring ring(const pelt::Ring& r) const {
        Ring out;
        for (const GridPoint& p : r)
            out.push_back(point(p));
        return out;
    }
    Box box_of(GridPoint low, GridPoint high) const {
        const Point a = point({low.x, high.y});
        const Point b = point({high.x, low.y});
        return {a.x, a.y, b.x - a.x, b.y - a.y};
    }
    std::vector<Ring> rings(const Polygon& polygon) const {
        std::vector<Ring> out{ring(polygon.outer)};
        for (const pelt::Ring& hole : polygon.holes)
            out.push_back(ring(hole));
        return out;
    }
    void add(const Picture& picture) { put(out_, picture, 0, 0); }
    bool is_free(const Box& box) const {
        return std::none_of(taken_.begin(), taken_.end(),
                            [&](const Box& other) { return box.overlaps(other); });
    }
    bool in_view(Um x) const { return x >= view_.from && x <= view_.to; }

    void film() {
        const auto strip = [&](Look look, Um low, Um high) {
            out_.marks.push_back(Rectangle{look, box_of({view_.from, low}, {view_.to, high})});
        };
        strip(Look::left_over, 0, roll_.width);
        if (roll_.trim > 0) {
            strip(Look::roll_edge, 0, roll_.trim);
            strip(Look::roll_edge, roll_.width - roll_.trim, roll_.width);
        }
        for (const Flaw& flaw : roll_.flaws)
            flawed(report::box_of(flaw, roll_.width));
    }

    /// Crossed out, and named where there is room.
    void flawed(pelt::Box part) {
        part.low.x = std::max(part.low.x, view_.from);
        part.high.x = std::min(part.high.x, view_.to);
        if (part.low.x >= part.high.x)
            return;
        const FlawMark flaw = flaw_mark(box_of(part.low, part.high), view_.type, letters_);
        add(flaw.picture);
        if (flaw.words)
            taken_.push_back(*flaw.words);
    }

    void laps(const PlacedPiece& p) {
        for (const pelt::Ring& line : lap_lines(job_, p))
            out_.marks.push_back(Path{Look::lap, {ring(line)}, false});
    }

    void piece(const PlacedPiece& p) {
        const pelt::Box cut = p.cut_box();
        if (cut.high.x <= view_.from || cut.low.x >= view_.to)
            return;
        const std::string number = std::to_string(p.number);
        out_.marks.push_back(
            GroupBegin{"piece " + std::string(name_of(p.id.kind)), "piece-" + number,
                       number + " · " + full_label_of(job_, p.id), description(p)});
        out_.marks.push_back(Path{Look::blank, rings(p.outline)});
        out_.marks.push_back(
            Path{p.id.kind == PieceKind::inlay ? Look::inlay : Look::wrapped, rings(p.wrapped)});
        if (view_.says_sizes)
            laps(p);
        label(p);
        out_.marks.push_back(GroupEnd{});
    }

    std::string description(const PlacedPiece& p) const {
        const pelt::Box cut = p.cut_box();
        const pelt::Box finished = p.finished_box();
        return "cut " + measures_.sides(cut.along(), cut.across()) + " " + measures_.size_unit() +
               ", finished " + measures_.sides(finished.along(), finished.across()) +
               ", from the free end " + measures_.size(cut.low.x) + ", from the near edge " +
               measures_.size(cut.low.y - (job_.by == CutBy::straight ? roll_.trim : 0));
    }

    PieceLabel label_text(const PlacedPiece& p) const {
        PieceLabel label{std::to_string(p.number), {}, {}};
        if (!view_.says_sizes)
            return label;
        label.forward_degrees = p.turn.millidegrees / 1000.0;
        label.lines = {full_label_of(job_, p.id)};
        const pelt::Box cut = p.cut_box();
        const pelt::Box finished = p.finished_box();
        const std::string sides = measures_.sides(cut.along(), cut.across());
        label.lines.push_back(view_.says_finished ? "cut " + sides : sides);
        if (view_.says_finished)
            label.lines.push_back("finished " +
                                  measures_.sides(finished.along(), finished.across()));
        return label;
    }

    void label(const PlacedPiece& p) {
        std::vector<Ring> clear;
        for (const std::vector<pelt::Ring>& holes : {p.outline.holes, p.wrapped.holes})
            for (const pelt::Ring& hole : holes)
                clear.push_back(ring(hole));
        const LabelSpace space(ring(p.wrapped.outer), clear, frame_);
        const PieceLabel text = label_text(p);
        // A label is part of its piece's group, and lies inside it.
        if (const auto set = set_label(text, space, view_.labels, letters_)) {
            taken_.push_back(set->box);
            put(out_, picture_of(*set, letters_), 0, 0);
        } else if (const auto number = set_on_blank(p, text)) {
            taken_.push_back(number->box);
            out_.marks.push_back(Rectangle{Look::plate, number->box});
            put(out_, picture_of(*number, letters_), 0, 0);
        } else if (in_view(p.cut_box().low.x)) {
            leaders_.add(space.middle(), text.number);
        }
    }

    /// The number by itself on the piece as cut, over the line where the film ends on the vehicle.
    std::optional<SetLabel> set_on_blank(const PlacedPiece& p, const PieceLabel& text) const {
        std::vector<Ring> clear;
        for (const pelt::Ring& hole : p.outline.holes)
            clear.push_back(ring(hole));
        LabelSizes sizes = view_.labels;
        if (!view_.cut_sizes.empty()) // cuts want room for their numbers around the piece
            sizes.alone.erase(sizes.alone.begin(),
                              sizes.alone.begin() +
                                  static_cast<std::ptrdiff_t>(2 * sizes.alone.size() / 3));
        return set_label({text.number, {}, {}}, LabelSpace(ring(p.outline.outer), clear, frame_),
                         sizes, letters_);
    }

    /// In the middle of what falls away, along it or across, where there is room.
    void left_over(const LeftOver& film) {
        const double margin = 0.5 * view_.type;
        const Box room = box_of(film.box.low, film.box.high);
        const Box inner{room.x + margin, room.y + margin, room.width - 2 * margin,
                        room.height - 2 * margin};
        for (const bool turned : {false, true}) {
            const Text text{film.words,  {room.x + room.width / 2, room.y + room.height / 2},
                            view_.type,  Anchor::middle,
                            Face::plain, turned};
            const Box box = draw::box_of(text, letters_);
            if (!inner.holds(box) || !is_free(box))
                continue;
            taken_.push_back(box);
            out_.marks.push_back(text);
            return;
        }
    }

    void cuts() {
        for (std::size_t i = 0; i < used_.cuts.size(); ++i) {
            const Cut& cut = used_.cuts[i];
            const GridPoint from{std::max(std::min(cut.from.x, cut.to.x), view_.from),
                                 std::min(cut.from.y, cut.to.y)};
            const GridPoint to{std::min(std::max(cut.from.x, cut.to.x), view_.to),
                               std::max(cut.from.y, cut.to.y)};
            if (from.x > to.x || (from.x == to.x && from.y == to.y))
                continue;
            out_.marks.push_back(Path{Look::cut, {{point(from), point(to)}}, false});
            if (is_numbered(static_cast<int>(i) + 1))
                cut_number(point(from), point(to), static_cast<int>(i) + 1);
        }
    }

    bool is_numbered(int cut) const {
        const std::vector<int>& some = view_.cuts_numbered;
        return !view_.cut_sizes.empty() &&
               (some.empty() || std::find(some.begin(), some.end(), cut) != some.end());
    }

    void cut_number(const Point& a, const Point& b, int number) {
        const auto ruler = view_.rulers.find(number);
        const std::string words = ruler == view_.rulers.end() ? "" : ruler->second;
        const std::string text = std::to_string(number);
        if (const auto set = set_cut_number(a, b, text, words, view_.cut_sizes, letters_, taken_)) {
            taken_.push_back(set->box);
            put(numbers_, set->picture, 0, 0);
            return;
        }
        // A cut too short for any number on it: the number goes above the roll, with a leader.
        leaders_.add({(a.x + b.x) / 2, (a.y + b.y) / 2}, "cut " + text);
    }

    bool crosses_the_roll(const Cut& cut) const {
        return cut.from.x == cut.to.x && std::min(cut.from.y, cut.to.y) <= roll_.trim &&
               std::max(cut.from.y, cut.to.y) >= roll_.width - roll_.trim;
    }

    /// From the free end, under the roll.
    DistanceRows distances() const {
        std::set<Um> places{view_.from, view_.to};
        for (const Cut& c : used_.cuts)
            if (crosses_the_roll(c) && in_view(c.from.x))
                places.insert(c.from.x);
        std::vector<Distance> distances;
        for (const Um place : places)
            distances.push_back({point({place, 0}).x, measures_.size(place)});
        return distance_rows(distances, frame_.bottom(), overhang(), view_.type, letters_);
    }

    const Job& job_;
    const std::vector<PlacedPiece>& all_;
    const UsedRoll& used_;
    const Roll& roll_;
    const Measures& measures_;
    const RollView& view_;
    const Letters& letters_;
    double left_;
    Box frame_;
    Picture out_;
    Picture numbers_; ///< of cuts, over everything else
    Leaders leaders_;
    std::vector<Box> taken_; ///< where something is written
};

} // namespace

RollView in_true_size(Um length) {
    RollView view;
    view.to = length;
    view.labels = {{150, 120, 100, 84, 70, 58, 48}, {120, 100, 84, 70, 58, 48, 38, 30, 22}};
    view.cut_sizes = {34, 26, 18, 13};
    return view;
}

double room_beside_roll(const RollView& view) {
    return (room_left + 1.5) * view.type;
}

Picture roll_picture(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                     std::size_t used_roll, const Measures& measures, const RollView& view,
                     const Letters& letters) {
    std::vector<const PlacedPiece*> own;
    for (const PlacedPiece& p : pieces)
        if (p.roll == used_roll)
            own.push_back(&p);
    return RollPainter(sheet, pieces, used_roll, measures, view, letters).painted(own);
}

} // namespace pelt::report::draw
