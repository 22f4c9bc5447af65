// SPDX-License-Identifier: MIT
// Blocks of a document and drawings, set one under the other on pages.
#pragma once

#include "report/document.hpp"
#include "report/draw/picture.hpp"

#include <string>
#include <vector>

namespace pelt::report::paper {

struct PageSize {
    double width = 0; ///< millimetres
    double height = 0;
};

inline constexpr double left_margin = 15; ///< also the holes of a binder
inline constexpr double right_margin = 11;
inline constexpr double top_margin = 11;
inline constexpr double bottom_margin = 16; ///< the foot of the page stands in it

class Flow {
public:
    /// `type` is the size of plain words.
    Flow(PageSize size, double type, const draw::Letters& letters);

    void add(const Document& document);
    void add(const Block& block);
    /// Never divided; on the next page where it does not fit.
    void add(const draw::Picture& picture);
    void add_centred(const draw::Picture& picture);
    /// A narrow table in two columns beside each other, read down the left one first; never divided.
    void add_in_two_columns(const Table& table);
    void space(double height) { y_ += height; }
    void new_page() { new_page(size_); }
    /// Pages from here on have this size.
    void new_page(PageSize size);

    double width() const { return size_.width - left_margin - right_margin; }
    /// What is left of the page.
    double room() const { return size_.height - bottom_margin - y_; }
    std::size_t page_count() const { return pages_.size(); }
    std::vector<draw::Picture> pages() && { return std::move(pages_); }

private:
    friend class BlockSetter;
    void need(double height);
    void line(const std::string& text, double size, draw::Face face, double indent = 0);

    PageSize size_;
    double type_;
    const draw::Letters& letters_;
    std::vector<draw::Picture> pages_;
    double y_ = top_margin;
};

/// Foot lines: `left` on every page, "page 2 of 7" on the right.
void add_feet(std::vector<draw::Picture>& pages, const std::string& left,
              const draw::Letters& letters);
/// "page 2 of 7" alone, at the lower right corner.
void add_page_numbers(std::vector<draw::Picture>& pages);

} // namespace pelt::report::paper
