// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/flow.hpp"

#include <lemon/network_simplex.h>
#include <lemon/preflow.h>
#include <lemon/smart_graph.h>

namespace quarterstep
{

namespace
{

using Graph = lemon::SmartDigraph;
using Simplex = lemon::NetworkSimplex<Graph, int, std::int64_t>;

/// People, then resources, then the sink, then a node a floor where its unserved people gather.
class Network
{
  public:
    Network(const Transport& transport, const PackedCosts& costs)
        : transport_(transport), costs_(costs), capacity_(graph_), cost_(graph_), supply_(graph_, 0)
    {
        const auto nodes = transport.people + transport.capacity.size() + 1 + transport.floors.size();
        graph_.reserveNode(static_cast<int>(nodes));
        graph_.reserveArc(static_cast<int>(transport.edges.size() + 2 * nodes));
        for (std::size_t i = 0; i < nodes; ++i)
            graph_.addNode();
        addArcs();
    }

    TransportPlan solve()
    {
        Simplex simplex(graph_);
        simplex.upperMap(capacity_).costMap(cost_).supplyMap(supply_);
        TransportPlan plan;
        plan.coarserBy = costs_.coarserBy;
        plan.edgeOf.assign(transport_.people, nothingGiven);
        if (transport_.people == 0 || simplex.run() != Simplex::OPTIMAL)
            return plan;
        for (std::size_t i = 0; i < transport_.edges.size(); ++i)
            if (simplex.flow(graph_.arcFromId(static_cast<int>(i))) > 0)
                plan.edgeOf[transport_.edges[i].person] = static_cast<std::int32_t>(i);
        return plan;
    }

  private:
    Graph::Node node(std::size_t place) { return Graph::nodeFromId(static_cast<int>(place)); }

    void addArc(std::size_t from, std::size_t to, int capacity, std::int64_t cost)
    {
        const auto arc = graph_.addArc(node(from), node(to));
        capacity_[arc] = capacity;
        cost_[arc] = cost;
    }

    void addArcs()
    {
        const auto people = transport_.people;
        const auto sink = people + transport_.capacity.size();
        for (std::size_t i = 0; i < transport_.edges.size(); ++i)
            addArc(transport_.edges[i].person, people + transport_.edges[i].resource, 1, costs_.edge[i]);
        for (std::size_t resource = 0; resource < transport_.capacity.size(); ++resource)
            addArc(people + resource, sink, transport_.capacity[resource], 0);
        std::vector<std::size_t> unserved(people, sink);
        for (std::size_t floor = 0; floor < transport_.floors.size(); ++floor) {
            const auto& group = transport_.floors[floor];
            const auto size = static_cast<int>(group.people.size());
            const int may = std::max(0, size - group.least);
            for (const auto person : group.people)
                unserved[person] = sink + 1 + floor;
            addArc(sink + 1 + floor, sink, may, 0);
            addArc(sink + 1 + floor, sink, size, costs_.shortOfFloor);
        }
        for (std::size_t person = 0; person < people; ++person) {
            addArc(person, unserved[person], 1, costs_.unserved[person]);
            supply_[node(person)] = 1;
        }
        supply_[node(sink)] = -static_cast<int>(people);
    }

    const Transport& transport_;
    const PackedCosts& costs_;
    Graph graph_;
    Graph::ArcMap<int> capacity_;
    Graph::ArcMap<std::int64_t> cost_;
    Graph::NodeMap<int> supply_;
};

} // namespace

TransportPlan solveTransport(const Transport& transport)
{
    const auto costs = packCosts(transport);
    return Network(transport, costs).solve();
}

MaximumFlow maximumFlow(std::size_t nodes, const std::vector<CapacityArc>& arcs)
{
    Graph graph;
    graph.reserveNode(static_cast<int>(nodes));
    graph.reserveArc(static_cast<int>(arcs.size()));
    for (std::size_t i = 0; i < nodes; ++i)
        graph.addNode();
    Graph::ArcMap<std::int64_t> capacity(graph);
    for (const auto& arc : arcs)
        capacity[graph.addArc(Graph::nodeFromId(static_cast<int>(arc.from)),
                              Graph::nodeFromId(static_cast<int>(arc.to)))] = arc.capacity;
    lemon::Preflow<Graph, Graph::ArcMap<std::int64_t>> flow(graph, capacity, Graph::nodeFromId(0),
                                                            Graph::nodeFromId(1));
    flow.init();
    flow.startFirstPhase(); // value and smallest cut are known after it
    MaximumFlow result;
    result.value = flow.flowValue();
    for (std::size_t i = 0; i < nodes; ++i)
        result.onSourceSide.push_back(flow.minCut(Graph::nodeFromId(static_cast<int>(i))));
    return result;
}

} // namespace quarterstep
