// SPDX-License-Identifier: MIT
#include "report/draw/roll.hpp"

#include "report/words.hpp"

#include <algorithm>
#include <set>

namespace pelt::report::draw {
namespace {

// In terms of the type's size.
constexpr double room_left = 4.2; ///< for "free end" and the film's arrow
constexpr double tick_row = 1.3;
constexpr double tick_length = 0.4;
constexpr double leader_gap = 2.2; ///< between a leader's number and the roll
constexpr double apart = 0.25;

double in_mm(Um um) {
    return static_cast<double>(um) / 1000.0;
}

class RollPainter {
public:
    RollPainter(const Sheet& sheet, const std::vector<PlacedPiece>& all, std::size_t used_roll,
                const Measures& measures, const RollView& view, const Letters& letters)
        : job_(sheet.plan.job()), all_(all), used_(sheet.plan.layout().rolls.at(used_roll)),
          roll_(job_.rolls.at(used_.roll)), measures_(measures), view_(view), letters_(letters),
          left_(room_left * view.type) {}

    Picture painted(const std::vector<const PlacedPiece*>& pieces) {
        frame_ = box_of({view_.from, 0}, {view_.to, roll_.width});
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
        add(labels_);
        for (const LeftOver& film : view_.left_over)
            left_over(film);
        cuts();
        add(numbers_);
        const double rows = distances();
        ends();
        double above = overhang() + 0.2 * view_.type;
        for (const Box& box : leaders_)
            above = std::max(above, 0.2 * view_.type - box.y);
        Picture whole;
        whole.width = std::max(frame_.right(), rightmost_) + 0.3 * view_.type;
        whole.height = above + frame_.height + rows;
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
        if (roll_.trim == 0)
            return;
        strip(Look::roll_edge, 0, roll_.trim);
        strip(Look::roll_edge, roll_.width - roll_.trim, roll_.width);
    }

    /// The other parts of the same panel that meet this one at a seam.
    std::vector<const PlacedPiece*> neighbours_of(const PlacedPiece& p) const {
        std::vector<const PlacedPiece*> out;
        for (const Seam& seam : job_.seams)
            for (const PlacedPiece& other : all_) {
                PieceId id = p.id;
                id.part = other.id.part;
                const std::pair parts{std::min(p.id.part, id.part), std::max(p.id.part, id.part)};
                if (other.id == id && p.id.kind == PieceKind::main && seam.vehicle == id.vehicle &&
                    seam.panel == id.panel && seam.side == id.side &&
                    parts == std::minmax({seam.upper_part, seam.under_part}))
                    out.push_back(&other);
            }
        return out;
    }

    /// Where the others end on this piece. All parts of a panel have one frame, in which they lie
    /// as on the vehicle.
    void laps(const PlacedPiece& p) {
        const std::vector<Ring> own = rings(p.wrapped);
        for (const PlacedPiece* other : neighbours_of(p)) {
            const pelt::Ring& from = p.piece.wrapped.outer;
            const GridPoint turned = placed(from, p.turn, {}).front();
            const GridPoint by{p.wrapped.outer.front().x - turned.x,
                               p.wrapped.outer.front().y - turned.y};
            const Ring line = ring(placed(other->piece.wrapped.outer, p.turn, by));
            for (std::size_t i = 0; i < line.size(); ++i) {
                const Point& a = line[i];
                const Point& b = line[(i + 1) % line.size()];
                if (is_inside(own, {(a.x + b.x) / 2, (a.y + b.y) / 2}))
                    out_.marks.push_back(Path{Look::lap, {{a, b}}, false});
            }
        }
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
               measures_.size(cut.low.y - roll_.trim);
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
        if (const auto set = set_label(text, space, view_.labels, letters_)) {
            taken_.push_back(set->box);
            // A label is part of its piece's group, and lies inside it.
            put(out_, picture_of(*set, letters_), 0, 0);
        } else if (in_view(p.cut_box().low.x)) {
            leader_to(space.middle(), text.number);
        }
    }

    /// Above the roll, as near to x as there is room; a second row where the first is full.
    Box free_place(double x, double width, double size) const {
        const double step = 0.25 * size;
        const double right = std::max({frame_.right(), view_.width, left_ + width}) - width;
        for (int row = 0;; ++row)
            for (int i = 0; i * step <= right - left_; ++i)
                for (const int way : {1, -1}) {
                    const double at = std::clamp(x - width / 2 + way * i * step, left_, right);
                    const Box box{at, -(leader_gap + 0.8 + 1.1 * row) * size, width, size};
                    if (std::none_of(leaders_.begin(), leaders_.end(),
                                     [&](const Box& other) { return box.overlaps(other); }))
                        return box;
                }
    }

    void leader_to(const Point& piece, const std::string& number) {
        const double size = view_.type;
        const double width = letters_.width(number, size, Face::bold) + apart * size;
        const Box box = free_place(piece.x, width, size);
        leaders_.push_back(box);
        const double middle = box.x + width / 2;
        rightmost_ = std::max(rightmost_, box.right());
        labels_.marks.push_back(
            Path{Look::leader, {{{middle, box.bottom() + 0.1 * size}, piece}}, false});
        labels_.marks.push_back(Text{
            number, {middle, box.y + box.height / 2}, size, Anchor::middle, Face::bold, false});
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
        const std::string text = std::to_string(number);
        const auto ruler = view_.rulers.find(number);
        if (ruler != view_.rulers.end())
            for (const double size : view_.cut_sizes)
                if (put_cut_number(a, b, size, text, ruler->second))
                    return;
        for (const double size : view_.cut_sizes)
            if (put_cut_number(a, b, size, text, ""))
                return;
        // A cut too short for any number on it: the number goes above the roll, with a leader.
        leader_to({(a.x + b.x) / 2, (a.y + b.y) / 2}, "cut " + text);
    }

    /// Slides the number, and the ruler's measure after it, along its cut until they lie over no
    /// other and no label.
    bool put_cut_number(Point a, Point b, double size, const std::string& text,
                        const std::string& ruler) {
        const bool upwards = a.x == b.x;
        if (upwards && a.y < b.y)
            std::swap(a, b); // both read from the near edge, or from the left
        const double radius = std::max(0.62, letters_.width_em(text, Face::bold) / 2 + 0.2) * size;
        const double tail =
            ruler.empty() ? 0 : letters_.width(ruler, size, Face::bold) + 0.5 * size;
        const double length = std::abs(b.x - a.x) + std::abs(b.y - a.y);
        const auto at = [&](double along) {
            return Point{a.x + (b.x - a.x) / length * along, a.y + (b.y - a.y) / length * along};
        };
        for (double along = radius + 0.3 * size; along <= length - radius - tail; along += radius) {
            const Point middle = at(along);
            const Point end = at(along + radius + tail);
            const Box box{middle.x - radius, upwards ? end.y : middle.y - radius,
                          upwards ? 2 * radius : end.x - middle.x + radius,
                          upwards ? middle.y + radius - end.y : 2 * radius};
            if (!is_free(box))
                continue;
            taken_.push_back(box);
            if (!ruler.empty())
                put_ruler(at(along + radius), at(along + radius + tail), size, ruler, upwards);
            numbers_.marks.push_back(Circle{Look::number_ring, middle, radius});
            numbers_.marks.push_back(Text{text, middle, size, Anchor::middle, Face::bold, false});
            return true;
        }
        return false;
    }

    void put_ruler(const Point& from, const Point& to, double size, const std::string& ruler,
                   bool upwards) {
        const double half = 0.55 * size;
        numbers_.marks.push_back(
            Rectangle{Look::plate, upwards ? Box{from.x - half, to.y, 2 * half, from.y - to.y}
                                           : Box{from.x, from.y - half, to.x - from.x, 2 * half}});
        numbers_.marks.push_back(Text{ruler,
                                      {(from.x + to.x) / 2, (from.y + to.y) / 2},
                                      size,
                                      Anchor::middle,
                                      Face::bold,
                                      upwards});
    }

    bool crosses_the_roll(const Cut& cut) const {
        return cut.from.x == cut.to.x && std::min(cut.from.y, cut.to.y) <= roll_.trim &&
               std::max(cut.from.y, cut.to.y) >= roll_.width - roll_.trim;
    }

    /// Distances from the free end under the roll, in as many rows as keep them apart.
    double distances() {
        std::set<Um> places{view_.from, view_.to};
        for (const Cut& c : used_.cuts)
            if (crosses_the_roll(c) && in_view(c.from.x))
                places.insert(c.from.x);
        std::vector<double> row_ends;
        const double type = view_.type;
        for (const Um place : places) {
            const std::string text = measures_.size(place);
            const double x = point({place, 0}).x;
            const double half = letters_.width(text, type, Face::bold) / 2 + apart * type;
            std::size_t row = 0;
            while (row < row_ends.size() && row_ends[row] > x - half)
                ++row;
            row_ends.resize(std::max(row_ends.size(), row + 1));
            row_ends[row] = x + half;
            rightmost_ = std::max(rightmost_, x + half);
            const double y = frame_.bottom() + overhang() +
                             (tick_length + tick_row * static_cast<double>(row)) * type;
            out_.marks.push_back(Path{Look::tick, {{{x, frame_.bottom()}, {x, y}}}, false});
            out_.marks.push_back(
                Text{text, {x, y + tick_row * type / 2}, type, Anchor::middle, Face::bold, false});
        }
        return overhang() + (tick_length + tick_row * static_cast<double>(row_ends.size())) * type;
    }

    /// Smaller than other words where the film is drawn low.
    void ends() {
        const std::string end = view_.from == 0 ? "free end" : "towards the free end";
        const double longest = std::max(letters_.width_em(end, Face::plain),
                                        letters_.width_em("film arrow", Face::plain) + 3.2);
        const double size = std::min(view_.type, frame_.height / longest);
        const double middle = frame_.height / 2;
        out_.marks.push_back(
            Text{end, {left_ - view_.type, middle}, size, Anchor::middle, Face::plain, true});
        if (job_.film.direction == Direction::any)
            return;
        const double length = letters_.width("film arrow", size);
        const double x = 1.2 * view_.type;
        const double below = middle + (length + 3.2 * size) / 2;
        out_.marks.push_back(
            Text{"film arrow", {x, below - length / 2}, size, Anchor::middle, Face::plain, true});
        out_.marks.push_back(Arrow{{x, below - length - 1.6 * size}, 2.2 * size, 0});
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
    Picture labels_;  ///< leaders, drawn outside the clip
    Picture numbers_; ///< of cuts, over everything else
    std::vector<Box> leaders_;
    std::vector<Box> taken_; ///< where something is written
    double rightmost_ = 0;
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
