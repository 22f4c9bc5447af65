// SPDX-License-Identifier: MIT
#include "read/yaml.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include <sstream>

namespace pelt::read {
namespace {

/// Builds the tree from yaml-cpp's events, which carry the place of everything.
class TreeBuilder : public YAML::EventHandler {
public:
    explicit TreeBuilder(std::shared_ptr<const Source> source) : source_(std::move(source)) {}

    std::optional<Node> take() { return std::move(root_); }

    void OnDocumentStart(const YAML::Mark&) override {}
    void OnDocumentEnd() override {}
    void OnNull(const YAML::Mark& mark, YAML::anchor_t) override {
        add(node(Node::Kind::empty, mark));
    }
    void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
        add(node(Node::Kind::empty, mark));
    }
    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t,
                  const std::string& value) override {
        Node scalar = node(Node::Kind::scalar, mark);
        scalar.text = value;
        scalar.quoted = tag == "!";
        add(std::move(scalar));
    }
    void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                         YAML::EmitterStyle::value) override {
        open_.push_back({node(Node::Kind::list, mark), std::nullopt});
    }
    void OnSequenceEnd() override { close(); }
    void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                    YAML::EmitterStyle::value) override {
        open_.push_back({node(Node::Kind::map, mark), std::nullopt});
    }
    void OnMapEnd() override { close(); }

private:
    struct Open {
        Node node;
        std::optional<Node> key;
    };

    Node node(Node::Kind kind, const YAML::Mark& mark) const {
        Node made;
        made.kind = kind;
        made.place = {source_, mark.line + 1, mark.column + 1};
        return made;
    }

    void close() {
        Node done = std::move(open_.back().node);
        open_.pop_back();
        add(std::move(done));
    }

    void add(Node child) {
        if (open_.empty()) {
            root_ = std::move(child);
            return;
        }
        Open& parent = open_.back();
        if (parent.node.kind == Node::Kind::list) {
            parent.node.items.push_back(std::move(child));
        } else if (!parent.key) {
            parent.key = std::move(child);
        } else {
            parent.node.entries.push_back({parent.key->text, parent.key->place, std::move(child)});
            parent.key.reset();
        }
    }

    std::shared_ptr<const Source> source_;
    std::vector<Open> open_;
    std::optional<Node> root_;
};

} // namespace

const Node* Node::find(std::string_view key) const {
    for (const Entry& entry : entries)
        if (entry.key == key)
            return &entry.value;
    return nullptr;
}

std::optional<Node> parse(std::shared_ptr<const Source> source, Faults& faults) {
    std::istringstream text(source->text);
    TreeBuilder builder(source);
    try {
        YAML::Parser parser(text);
        parser.HandleNextDocument(builder);
    } catch (const YAML::Exception& e) {
        faults.push_back({Severity::file,
                          {source, e.mark.line + 1, e.mark.column + 1},
                          "",
                          "not YAML",
                          "check the indent and the brackets here"});
        return std::nullopt;
    }
    return builder.take();
}

} // namespace pelt::read
