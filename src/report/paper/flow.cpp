// SPDX-License-Identifier: MIT
#include "report/paper/flow.hpp"

#include "report/paper/table.hpp"
#include "report/paper/type_sizes.hpp"

#include <algorithm>

namespace pelt::report::paper {
namespace {

// In terms of plain words.
constexpr double pitch = 1.3;
constexpr double title_size = 1.75;
constexpr double least_of_title = 0.55; ///< of its size, to stand in one line
constexpr double heading_size = 1.12;
constexpr double before_heading = 1.0;
constexpr double item_indent = 1.6;

constexpr std::size_t short_table = 6; ///< rows
constexpr double big_size = 9.5;       ///< millimetres: read from a metre away
constexpr double big_room = 3.5;       ///< around it
constexpr double foot_size = smallest_type;

/// Until it is at least as high as the rest.
std::size_t rows_in_first_column(const SetTable& set) {
    const double all = set.height() - set.head.height;
    double height = 0;
    std::size_t count = 0;
    while (count < set.rows.size() && height < all / 2)
        height += set.rows[count++].height;
    return count;
}

/// The rows from `from` to before `to` under the head; nothing where there are none.
draw::Picture column_of(const SetTable& set, std::size_t from, std::size_t to) {
    draw::Picture column;
    if (from == to)
        return column;
    draw::put(column, set.head, 0, 0);
    column.height = set.head.height;
    for (std::size_t i = from; i < to; ++i) {
        draw::put(column, set.rows[i], 0, column.height);
        column.height += set.rows[i].height;
    }
    return column;
}

} // namespace

/// One kind of block after another.
class BlockSetter {
public:
    explicit BlockSetter(Flow& flow) : flow_(flow) {}

    void operator()(const Title& title) const {
        double size = title_size * flow_.type_;
        if (!title.right.empty())
            size = put_right(title, size);
        flow_.line(title.text, size, draw::Face::bold);
    }
    void operator()(const Heading& heading) const {
        const double size = heading_size * flow_.type_;
        // A heading does not stand alone at the foot of a page.
        flow_.need((before_heading + 4 * pitch) * size);
        flow_.y_ += before_heading * size;
        flow_.line(heading.text, size, draw::Face::bold);
    }
    void operator()(const Big& big) const {
        double size = big_size;
        const double width = flow_.width() - 2 * big_room;
        for (const std::string& text : big.texts)
            size = std::min(size, width / flow_.letters_.width_em(text, draw::Face::bold));
        const double height = pitch * size * static_cast<double>(big.texts.size()) + big_room;
        flow_.need(height + big_room);
        draw::Picture& page = flow_.pages_.back();
        flow_.y_ += big_room / 3;
        page.marks.push_back(
            draw::Rectangle{draw::Look::frame, {left_margin, flow_.y_, flow_.width(), height}});
        double y = flow_.y_ + big_room / 2;
        for (const std::string& text : big.texts) {
            page.marks.push_back(draw::Text{text,
                                            {left_margin + big_room, y + pitch * size / 2},
                                            size,
                                            draw::Anchor::start,
                                            draw::Face::bold});
            y += pitch * size;
        }
        flow_.y_ += height + big_room / 2;
    }
    void operator()(const Line& line) const {
        flow_.line(line.text, flow_.type_, draw::Face::plain);
    }
    void operator()(const Items& items) const {
        const double indent = item_indent * flow_.type_;
        const bool marked = items.mark == "!";
        for (const std::string& text : items.texts) {
            flow_.need(pitch * flow_.type_);
            const std::size_t page = flow_.pages_.size();
            const double y = flow_.y_ + pitch * flow_.type_ / 2;
            flow_.pages_[page - 1].marks.push_back(draw::Text{marked ? "!" : "–",
                                                              {left_margin + 0.35 * flow_.type_, y},
                                                              flow_.type_ * (marked ? 1.3 : 1),
                                                              draw::Anchor::start,
                                                              draw::Face::bold});
            flow_.line(text, flow_.type_, draw::Face::plain, indent);
        }
    }
    void operator()(const RollSketch&) const {} // paper has drawings to scale
    void operator()(const Table& table) const {
        const SetTable set = set_table(table, flow_.width(), flow_.type_, flow_.letters_);
        if (set.rows.empty())
            return;
        // A short table is not divided.
        flow_.need(set.rows.size() <= short_table ? set.height()
                                                  : set.head.height + set.rows.front().height);
        flow_.add(set.head);
        for (const draw::Picture& row : set.rows) {
            if (row.height > flow_.room()) {
                flow_.new_page();
                flow_.add(set.head);
            }
            flow_.add(row);
        }
        flow_.y_ += 0.6 * flow_.type_;
    }

private:
    /// Both in one line, smaller if need be, else the right one above. The size of the left one.
    double put_right(const Title& title, double size) const {
        const double both = flow_.letters_.width_em(title.right, draw::Face::bold) +
                            flow_.letters_.width_em(title.text, draw::Face::bold) + 1;
        const bool beside = both * least_of_title * size <= flow_.width();
        const double fitted = beside ? std::min(size, flow_.width() / both) : size;
        flow_.need(2 * pitch * fitted);
        flow_.pages_.back().marks.push_back(
            draw::Text{title.right,
                       {flow_.size_.width - right_margin, flow_.y_ + pitch * fitted / 2},
                       fitted,
                       draw::Anchor::end,
                       draw::Face::bold});
        if (!beside)
            flow_.y_ += pitch * fitted;
        return fitted;
    }

    Flow& flow_;
};

Flow::Flow(PageSize size, double type, const draw::Letters& letters)
    : size_(size), type_(type), letters_(letters) {
    new_page(size);
}

void Flow::new_page(PageSize size) {
    size_ = size;
    y_ = top_margin;
    pages_.push_back({{}, size.width, size.height});
}

void Flow::need(double height) {
    if (height > room() && y_ > top_margin)
        new_page(size_);
}

void Flow::line(const std::string& text, double size, draw::Face face, double indent) {
    const auto measure = [&](const std::string& t) { return letters_.width(t, size, face); };
    for (const std::string& words : lines_within(text, width() - indent, measure)) {
        need(pitch * size);
        pages_.back().marks.push_back(draw::Text{
            words, {left_margin + indent, y_ + pitch * size / 2}, size, draw::Anchor::start, face});
        y_ += pitch * size;
    }
}

void Flow::add(const Block& block) {
    std::visit(BlockSetter(*this), block);
}

void Flow::add(const Document& document) {
    for (const Block& block : document)
        add(block);
}

void Flow::add(const draw::Picture& picture) {
    need(picture.height);
    draw::put(pages_.back(), picture, left_margin, y_);
    y_ += picture.height;
}

void Flow::add_centred(const draw::Picture& picture) {
    draw::Picture whole{{}, width(), picture.height};
    draw::put(whole, picture, std::max(0.0, (width() - picture.width) / 2), 0);
    add(whole);
}

void Flow::add_in_two_columns(const Table& table) {
    if (table.rows.empty())
        return;
    const double between = 2 * type_;
    const SetTable set = set_table(table, (width() - between) / 2, type_, letters_);
    const std::size_t left = rows_in_first_column(set);
    const draw::Picture first = column_of(set, 0, left);
    const draw::Picture second = column_of(set, left, set.rows.size());
    draw::Picture both{{}, width(), std::max(first.height, second.height)};
    draw::put(both, first, 0, 0);
    draw::put(both, second, (width() + between) / 2, 0);
    add(both);
    y_ += 0.6 * type_;
}

void add_page_numbers(std::vector<draw::Picture>& pages) {
    for (std::size_t i = 0; i < pages.size(); ++i)
        pages[i].marks.push_back(
            draw::Text{"page " + std::to_string(i + 1) + " of " + std::to_string(pages.size()),
                       {pages[i].width - right_margin, pages[i].height - bottom_margin / 2},
                       foot_size,
                       draw::Anchor::end,
                       draw::Face::bold});
}

void add_feet(std::vector<draw::Picture>& pages, const std::string& left,
              const draw::Letters& letters) {
    for (std::size_t i = 0; i < pages.size(); ++i) {
        draw::Picture& page = pages[i];
        const double y = page.height - bottom_margin / 2 - 0.5;
        const std::string number =
            "page " + std::to_string(i + 1) + " of " + std::to_string(pages.size());
        const double right = page.width - right_margin;
        page.marks.push_back(
            draw::Path{draw::Look::rule, {{{left_margin, y - 2.8}, {right, y - 2.8}}}, false});
        const double room = right - left_margin -
                            letters.width(number, foot_size, draw::Face::bold) - 2 * foot_size;
        const auto measure = [&](const std::string& t) { return letters.width(t, foot_size); };
        page.marks.push_back(draw::Text{lines_within(left, room, measure).front(),
                                        {left_margin, y},
                                        foot_size,
                                        draw::Anchor::start,
                                        draw::Face::plain});
        page.marks.push_back(
            draw::Text{number, {right, y}, foot_size, draw::Anchor::end, draw::Face::bold});
    }
}

} // namespace pelt::report::paper
